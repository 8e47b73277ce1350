package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.PlayableSet;
import entracte.check.SetBuilder;
import entracte.plan.sample.RandomSets;
import entracte.plan.sample.Sample;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Every move takes a second here. */
@DisplayName("A plan that shall keep within the gaps")
class EveningTest {
  private static final Clock A_SECOND_EACH =
      plan -> plan.changeovers().stream().mapToDouble(Changeover::moves).toArray();

  @Test
  void overrunsNoMoreThanOneOfFewestMovesAndOftenLess() {
    int better = 0;
    for (int seed = 0; seed < 30; seed++) {
      PlayableSet set = withGaps(RandomSets.any(seed, 4, 8), seed);
      Options options = Options.defaults().withRounds(1);
      Result fewest = Planner.plan(set, options);
      if (fewest instanceof Result.Planned first) {
        Plan even = planned(set, options.withAim(Aim.EVEN).withClock(A_SECOND_EACH));
        assertEquals(List.of(), Verifier.verify(even), "seed " + seed);
        assertTrue(overrun(even) <= overrun(first.plan()), "seed " + seed);
        assertTrue(even.moves() >= first.lowerBound(), "seed " + seed);
        better += overrun(even) < overrun(first.plan()) ? 1 : 0;
      }
    }
    assertTrue(better >= 5, better + " of 30 sets overran less");
  }

  @Test
  void asksNoMoreMovesThanTheFewestIfOnlyFewestMovesAreAimedAt() {
    for (int seed = 0; seed < 30; seed++) {
      PlayableSet set = withGaps(RandomSets.any(seed, 4, 8), seed);
      Options options = Options.defaults().withRounds(1);
      if (Planner.plan(set, options) instanceof Result.Planned blind) {
        Plan timed = planned(set, options.withClock(A_SECOND_EACH));
        assertEquals(List.of(), Verifier.verify(timed), "seed " + seed);
        assertEquals(blind.plan().moves(), timed.moves(), "seed " + seed);
        assertEquals(blind.plan().setUpMoves(), timed.setUpMoves(), "seed " + seed);
        assertTrue(overrun(timed) <= overrun(blind.plan()), "seed " + seed);
      }
    }
  }

  private static Plan planned(PlayableSet set, Options options) {
    return ((Result.Planned) Planner.plan(set, options)).plan();
  }

  private static double overrun(Plan plan) {
    double sum = 0;
    for (Changeover changeover : plan.changeovers()) {
      OptionalDouble gap = plan.songs().get(changeover.to()).song().gapSeconds();
      sum += changeover.setUp() ? 0 : Math.max(0, changeover.moves() - gap.orElseThrow());
    }
    return sum;
  }

  /** Every other gap is short. */
  private static PlayableSet withGaps(Sample sample, int seed) {
    SetList written = sample.set().setList();
    List<Song> songs = new ArrayList<>();
    for (Song song : written.songs()) {
      double gap = (songs.size() + seed) % 2 == 0 ? 3 : 30;
      songs.add(
          new Song(
              song.name(),
              song.patch(),
              song.settings(),
              OptionalDouble.of(gap),
              song.gear(),
              song.card()));
    }
    return SetBuilder.playable(
        new SetList(written.name(), written.rig(), songs, written.parking()));
  }
}
