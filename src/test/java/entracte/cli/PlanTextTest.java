package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.CueSheet;
import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.plan.Aim;
import entracte.plan.Plan;
import entracte.plan.Result;
import entracte.plan.Result.Stopped;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanTextTest {
  private static final Plan PLAN = KitchenDances.plan();
  private static final CueSheet SHEET = CueSheet.of(PLAN, Pace.estimated());

  @Test
  void theShortTextIsTheRunningOrderAndTheTotals() {
    assertEquals(
        """
        Kitchen Dances, 3 songs on Test case

        Running order
             song           moves  takes        gap
          1  Plain Morning     13  63 s         set-up, nobody waits
          2  Two Kettles        6  27 s         30 s
          3  Late Bus          10  60 s         40 s, 20 s too short
             between songs     16  87 s

        Between songs: 16 moves; lower bound 16. Proven: no plan has fewer.
        Set-up: 13 moves; lower bound 13. Proven: no plan with so few moves between
          songs has fewer.
        1 gap is too short, by 20 s in all. Times are estimates until you have
          rehearsed.
        """,
        text(PlanText.brief(planned(16, 13, Stopped.PROVEN), SHEET, 2)));
  }

  @Test
  void theWholeTextSaysWhoPlaysWhatAndEveryMove() {
    List<String> lines = PlanText.full(planned(16, 13, Stopped.PROVEN), SHEET, 2, false);
    assertEquals(
        """
        Who plays what
          1  Plain Morning: osc 1 plays lead; filter 1 plays bright; mix 1 plays blend
               (low on 1)
          2  Two Kettles: osc 1 plays lead; filter 1 plays bright; mix 1 plays blend
               (low on 2)
          3  Late Bus: osc 2 plays lead; osc 1 plays bass; filter 1 plays bright; mix 1
               plays blend (low on 2, high on 1); mult 1 splits keys pitch 2
        """,
        text(lines.subList(2, 9)));
    int from = lines.indexOf("To 2 Two Kettles: 6 moves, about 27 s of a gap of 30 s");
    assertEquals(
        """
        To 2 Two Kettles: 6 moves, about 27 s of a gap of 30 s
          LOWER the main level before any plug or switch moves
          MOVE from keys pitch 1, to keys pitch 2; keep the plug in osc 1 pitch 1
          MOVE from mix 1 channel 1 in, to mix 1 channel 2 in; keep the plug in osc 1
            saw
          TURN mix 1 channel 2 level to 5
          TURN filter 1 cutoff from 4 to 6.5
          TUNE osc 1 (another pitch cord)
          RAISE the main level slowly
          Waits unheard: lfo 1 out to osc 2 fm
          Before you play, check: mix 1 channel 2 level at 5; filter 1 resonance at 3;
            osc 1 octave at 8
        """,
        text(lines.subList(from, from + 12)));
  }

  @Test
  void whatIsDoneEarlyIsMarked() {
    List<String> lines = PlanText.full(planned(16, 13, Stopped.PROVEN), SHEET, 2, false);
    assertTrue(lines.contains("  PLUG lfo 1 out, then osc 2 fm (early, song 3)"), text(lines));
  }

  @Test
  void askedWhyEachMoveIsFollowedByItsReason() {
    List<String> lines = PlanText.full(planned(16, 13, Stopped.PROVEN), SHEET, 2, true);
    int early = lines.indexOf("  PLUG lfo 1 out, then osc 2 fm");
    assertEquals(
        "      early, for song 3 (Late Bus): osc 2 is idle until then", lines.get(early + 1));
    int level = lines.indexOf("  RAISE the main level slowly");
    assertEquals("  Waits unheard: lfo 1 out to osc 2 fm", lines.get(level + 1));
  }

  @Test
  void aGapToTheBoundIsNeverCalledProven() {
    List<String> lines = PlanText.brief(planned(14, 13, Stopped.TIME), SHEET, 2.5);
    assertEquals(
        """
        Between songs: 16 moves; lower bound 14. Not proven: a better plan could save at
          most 2 moves. The search stopped at its limit of 2.5 s; --seconds gives it
          more.
        Set-up: 13 moves.
        """,
        text(lines.subList(9, 13)));
  }

  @Test
  void aSetUpThatMayBeBetterSaysSo() {
    List<String> lines = PlanText.brief(planned(16, 12, Stopped.ROUNDS), SHEET, 2);
    assertEquals(
        """
        Set-up: 13 moves; lower bound 12. Not proven: a better plan could save at most 1
          move. The search stopped after its usual rounds; --seconds gives it more.
        """,
        text(lines.subList(10, 12)));
  }

  @Test
  void noLineIsWiderThanTheScreen() {
    List<String> lines = PlanText.full(planned(14, 13, Stopped.CANCELLED), SHEET, 2, true);
    assertTrue(lines.stream().allMatch(line -> line.length() <= 80), text(lines));
  }

  private static Result.Planned planned(int bound, int setUpBound, Stopped stopped) {
    return new Result.Planned(Aim.FEWEST, PLAN, bound, setUpBound, stopped, 0.4);
  }

  private static String text(List<String> lines) {
    return String.join("\n", lines) + "\n";
  }
}
