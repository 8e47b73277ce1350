package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.HandMadeSet;
import entracte.cue.CueSheet;
import entracte.cue.KitchenDances;
import entracte.plan.Plan;
import entracte.plan.SongPlan;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The length of {@link KitchenDances}, its songs given lengths and talk. */
class SetLengthTest {
  private static final double[] LENGTHS = {200, 120, 180};

  private static SetLength length(boolean keep, double... talk) {
    Plan bare = KitchenDances.plan();
    List<SongPlan> songs = new ArrayList<>();
    for (int i = 0; i < LENGTHS.length; i++) {
      SongPlan plan = bare.songs().get(i);
      songs.add(
          new SongPlan(
              timed(plan.song(), LENGTHS[i], talk[i], keep),
              plan.casting(),
              plan.required(),
              plan.parked(),
              plan.positions()));
    }
    SetList set =
        new SetList(
            "Kitchen Dances",
            bare.setList().rig(),
            songs.stream().map(SongPlan::song).toList(),
            true);
    Plan plan =
        new Plan(HandMadeSet.of(set), bare.start(), songs, bare.jumpers(), bare.changeovers());
    Learned learned = Learned.from(set.rig(), List.of());
    return new SetLength(plan, CueSheet.of(plan, learned), learned);
  }

  private static Song timed(Song song, double seconds, double talk, boolean keep) {
    Song.Card card = song.card();
    return new Song(
        song.name(),
        song.patch(),
        song.settings(),
        song.gapSeconds(),
        song.gear(),
        new Song.Card(
            card.key(), card.tempo(), card.starts(), card.notes(), OptionalDouble.of(seconds)),
        new Song.Running(talk, keep));
  }

  @Test
  void longTalkCoversTheChangeovers() {
    SetLength length = length(false, 0, 1000, 1000);
    assertEquals(500 + 2000, length.typical(), 5);
  }

  @Test
  void withoutTalkTheChangeoversAdd() {
    SetLength length = length(false, 0, 0, 0);
    assertTrue(length.typical() > 500 + 40, "takes " + length.typical());
    assertTrue(length.low() < length.typical() && length.typical() < length.high());
  }

  @Test
  void talkBeforeTheFirstSongIsBeforeTheSet() {
    assertEquals(length(false, 0, 0, 0).typical(), length(false, 999, 0, 0).typical());
  }

  @Test
  void theOddsAreThoseOfTheSpread() {
    SetLength length = length(false, 0, 0, 0);
    assertEquals(0.9, length.odds(length.high()), 0.01);
    assertEquals(0.5, length.odds(length.typical()), 0.01);
    assertEquals(0, length.odds(100));
    assertEquals(1, length.odds(1e6));
  }

  /**
   * One player has good and bad nights. So all gaps are made in one night at least as often as if
   * each were played by somebody else (Slepian, Bell System Technical Journal 41, 1962), and never
   * oftener than the hardest of them.
   */
  @Test
  void everyGapIsMadeAsOftenAsOnePlayersNightsAllow() {
    Plan plan = KitchenDances.plan();
    Learned learned = Learned.from(plan.setList().rig(), List.of());
    CueSheet sheet = CueSheet.of(plan, learned);
    double[] odds =
        Ranking.standings(sheet, learned).stream()
            .mapToDouble(standing -> standing.odds().orElseThrow())
            .toArray();
    assertEquals(2, odds.length);
    double every = new SetLength(plan, sheet, learned).everyGap();
    double drawn = 0.03; // 4000 draws, and a spread in 40 slices
    assertTrue(every >= odds[0] * odds[1] - drawn, every + " of " + odds[0] + ", " + odds[1]);
    assertTrue(every <= Math.min(odds[0], odds[1]) + drawn, every + " of " + odds[0]);
    assertTrue(every > 0 && every < 1, "" + every);
  }

  @Test
  void neitherTheOpenerNorTheLastSongIsLeftOut() {
    List<SetLength.Drop> drops = length(false, 0, 0, 0).drops(400);
    assertEquals(1, drops.size());
    assertEquals(2, drops.get(0).number());
  }

  @Test
  void leavingASongOutSavesItAndWhatTheDirectWayIsShorter() {
    SetLength.Drop drop = length(false, 0, 300, 300).drops(400).get(0);
    assertEquals(120 + 300, drop.savedSeconds(), 1e-9);
  }

  @Test
  void aSongToKeepIsNeverLeftOut() {
    assertEquals(List.of(), length(true, 0, 0, 0).drops(400));
  }

  @Test
  void theSameSetHasTheSameLengthEveryTime() {
    assertEquals(length(false, 0, 0, 0).high(), length(false, 0, 0, 0).high());
  }
}
