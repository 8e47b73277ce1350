package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.cue.SongCard;
import entracte.plan.Aim;
import entracte.plan.Plan;
import entracte.plan.Result;
import entracte.plan.Result.Stopped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
          1  Plain Morning     13  1 min 3 s    set-up, nobody waits
          2  Two Kettles        6  27 s         30 s
          3  Late Bus          10  1 min        40 s, 20 s too short
             between songs     16  1 min 27 s
        Moves: 1 for each plug out, plug in, TURN and SWITCH; so PULL, PLUG and MOVE (a
          plug from jack to jack) are 2. LOWER, TUNE, RAISE and SET are not counted.

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
          Before tuning: main level still down, headphones up from zero, or a tuner
          TUNE osc 1 (another pitch cord)
          RAISE the main level slowly
          Gear: piano to bank 1/2, program 5, volume 90
          Waits unheard: lfo 1 out to osc 2 fm
          Before you play, check: mix 1 channel 2 level at 5; filter 1 resonance at 3;
            osc 1 octave at 8
        """,
        text(lines.subList(from, from + 14)));
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
    assertEquals("  Waits unheard: lfo 1 out to osc 2 fm", lines.get(level + 2));
  }

  @Test
  void aGapToTheBoundIsNeverCalledProven() {
    List<String> lines = PlanText.brief(planned(14, 13, Stopped.TIME), SHEET, 2.5);
    assertEquals(
        """
        Between songs: 16 moves; lower bound 14. Not proven: a better plan could save at
          most 2 moves. The search stopped at its limit of 2.5 s, so another run may
          find another plan; --seconds gives it more.
        Set-up: 13 moves; lower bound 13. No better plan has fewer; one with fewer moves
          between songs may have more.
        """,
        text(lines.subList(11, 16)));
  }

  @Test
  void theSetUpOfAnUnprovenPlanSaysItsBoundAndWhatIsOpen() {
    List<String> lines = PlanText.brief(planned(14, 10, Stopped.TIME), SHEET, 2.5);
    assertEquals(
        """
        Set-up: 13 moves; lower bound 10. Not proven: a better plan could save at most 3
          moves.
        """,
        text(lines.subList(14, 16)));
  }

  @Test
  void theSetUpOfAPlanForTheFewestSecondsSaysItsBoundToo() {
    Result.Planned fastest =
        new Result.Planned(Aim.FASTEST, PLAN, 14, 10, false, Stopped.ROUNDS, 0.4);
    String text = text(PlanText.brief(fastest, SHEET, 2.5)).replaceAll("\\s+", " ");
    assertTrue(
        text.contains(
            "Set-up: 13 moves; lower bound 10. The bound is for plans with the fewest moves"
                + " between songs."),
        text);
  }

  /** Each is 0.6 s over: three such would add up to 2 s, but the lines say 1 s each. */
  @Test
  void overrunsAreRoundedBeforeTheyAreAddedUp() {
    List<Cue> cues = new ArrayList<>();
    for (int number = 1; number <= 3; number++) {
      cues.add(late(number));
    }
    CueSheet late = new CueSheet("Late", "case", List.of(), List.of(), cues, "Estimates.");
    List<String> lines = PlanText.brief(planned(16, 13, Stopped.PROVEN), late, 2);
    assertEquals(
        """
          1  Song               0  1 min 3 s    1 min 2 s, 1 s too short
          2  Song               0  1 min 3 s    1 min 2 s, 1 s too short
          3  Song               0  1 min 3 s    1 min 2 s, 1 s too short
             between songs      0  3 min 9 s
        """,
        text(lines.subList(4, 8)));
    assertEquals("3 gaps are too short, by 3 s in all. Estimates.", lines.get(lines.size() - 1));
  }

  @Test
  void anEncoreIsMarkedAndTheSlotIsHeldAgainstTheSum() {
    Cue plain = late(1);
    Cue encore =
        new Cue(
            2,
            "Lamp",
            false,
            List.of(),
            30,
            0,
            OptionalDouble.empty(),
            List.of(),
            List.of(),
            new SongCard(List.of(), List.of(), List.of(), true));
    CueSheet sheet =
        new CueSheet(
            "Set",
            "case",
            List.of(),
            List.of(),
            List.of(plain, encore),
            "Estimates.",
            Optional.of("The sum."));
    List<String> lines = PlanText.brief(planned(16, 13, Stopped.PROVEN), sheet, 2);
    assertEquals("  2  Lamp (encore)      0  30 s", lines.get(5));
    assertEquals("The sum.", lines.get(7));
  }

  private static Cue late(int number) {
    return new Cue(
        number,
        "Song",
        false,
        List.of(),
        62.6,
        0,
        OptionalDouble.of(62),
        List.of(),
        List.of(),
        new SongCard(List.of(), List.of(), List.of()));
  }

  @Test
  void aSetUpThatMayBeBetterSaysSo() {
    List<String> lines = PlanText.brief(planned(16, 12, Stopped.ROUNDS), SHEET, 2);
    assertEquals(
        """
        Set-up: 13 moves; lower bound 12. Not proven: a better plan could save at most 1
          move. The search stopped after its usual rounds; --seconds gives it more.
        """,
        text(lines.subList(12, 14)));
  }

  @Test
  void noLineIsWiderThanTheScreen() {
    List<String> lines = PlanText.full(planned(14, 13, Stopped.CANCELLED), SHEET, 2, true);
    assertTrue(lines.stream().allMatch(line -> line.length() <= 80), text(lines));
  }

  private static Result.Planned planned(int bound, int setUpBound, Stopped stopped) {
    return new Result.Planned(Aim.FEWEST, PLAN, bound, setUpBound, false, stopped, 0.4);
  }

  private static String text(List<String> lines) {
    return String.join("\n", lines) + "\n";
  }
}
