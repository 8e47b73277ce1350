package entracte.plan;

import static entracte.check.PatchBuilder.patch;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import entracte.check.RigBuilder;
import entracte.check.SetBuilder;
import entracte.rig.Figures;
import entracte.rig.Rig;
import entracte.setlist.Song;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One knob through a set is the piercing of intervals by points. The intervals are the activities
 * of Cormen, Leiserson, Rivest and Stein, Introduction to Algorithms, section 16.1 (second and
 * third edition), by their ends: four of them are compatible, so no fewer than four points pierce
 * all, and four do. The first point is set before the show, so three turns remain.
 */
final class KnobsThroughASetTest {
  private static final int[] STARTS = {1, 3, 0, 5, 3, 5, 6, 8, 8, 2, 12};

  @ParameterizedTest
  @CsvSource({"4 5 6 7 9 9 10 11 12 14 16", "4 5 6 7 8 9 10 11 12 13 14"})
  void fourPointsPierceTheActivities(String finishes) {
    Rig rig =
        RigBuilder.rig()
            .kind("oscillator", k -> k.out("saw").knob("width", 0, 16))
            .kind("output", k -> k.in("left"))
            .row("osc: oscillator", "out: output")
            .build();
    String[] ends = finishes.split(" ");
    Song[] songs = new Song[STARTS.length];
    for (int activity = 0; activity < songs.length; activity++) {
      double low = STARTS[activity];
      double high = Integer.parseInt(ends[activity]);
      String value = Figures.plain((low + high) / 2) + " +-" + Figures.plain((high - low) / 2);
      songs[activity] =
          patch("activity " + activity)
              .cord("osc.saw", "out.left")
              .set("osc", "width", value)
              .song();
    }
    Result.Planned planned =
        assertInstanceOf(
            Result.Planned.class,
            Planner.plan(SetBuilder.playable(rig, songs), Options.defaults()));
    assertEquals(List.of(), Verifier.verify(planned.plan()));
    assertEquals(3, planned.plan().moves());
    assertEquals(3, planned.lowerBound());
    assertEquals(3, planned.plan().setUpMoves(), "two plugs and a turn");
  }
}
