package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.plan.Plan;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SummaryTest {
  private static final Plan PLAN = KitchenDances.plan();
  private static final Instant BEGIN = Instant.parse("2026-03-01T19:00:00Z");

  private static List<String> lines(double... toKettles) {
    return linesOf(80, toKettles);
  }

  private static List<String> linesOf(int width, double... toKettles) {
    return summary(width, 0.8, toKettles);
  }

  private static List<String> summary(int width, double safe, double... toKettles) {
    Cue cue = CueSheet.of(PLAN, Pace.estimated()).cues().get(1);
    Makeup makeup = Makeup.sum(new TimeModel(PLAN.setList().rig()).makeup(cue.steps()));
    List<Run> runs = new ArrayList<>();
    for (double each : toKettles) {
      runs.add(
          new Run(
              BEGIN.plusSeconds(60L * runs.size()),
              Run.Where.REHEARSAL,
              cue.song(),
              Mark.of(cue.steps()),
              each,
              runs.isEmpty() ? 1 : 0,
              makeup,
              List.of()));
    }
    Learned learned = Learned.from(PLAN.setList().rig(), runs);
    CueSheet sheet = CueSheet.of(PLAN, learned);
    return Summary.lines(PLAN, sheet, learned, BEGIN.plusSeconds(150), safe, width);
  }

  @Test
  void aChangeoverThatWasRehearsedIsShownWithItsTimesAndOdds() {
    List<String> lines = lines(44, 38, 35, 31, 29);
    assertEquals(
        "Kitchen Dances. Times are learned from 5 timed runs of 1 changeover.", lines.get(0));
    int from = lines.indexOf("To 2 Two Kettles: 6 moves, gap 30 s");
    assertEquals("      44 s | x", lines.get(from + 1));
    assertEquals(
        "  5 runs, last 29 s, best 29 s, 1 slip; next about",
        lines.get(from + 8).replaceFirst("(about) .*", "$1"));
    assertTrue(
        lines.get(from + 9).matches("  Odds of making the gap: \\d+ % \\(\\d+ % before\\)\\. .*"),
        lines.get(from + 9));
    assertEquals(
        "  The times do not tell yet whether they fall by a power law or an exponential one.",
        lines.get(from + 10));
  }

  @Test
  void aLawIsNamedOnceTheTimesTellIt() {
    double[] exponential = new double[16];
    for (int n = 0; n < exponential.length; n++) {
      exponential[n] = 60 * Law.exponential(0.4, 0.4).part(n + 1);
    }
    assertTrue(
        lines(exponential).stream()
            .anyMatch(
                line -> line.startsWith("  The times fall more like an exponential law than")),
        lines(exponential).toString());
  }

  @Test
  void oneThatWasNeverTimedHasALineOfTheOverviewAlone() {
    List<String> lines = lines();
    assertEquals("Kitchen Dances. Times are estimates until you have rehearsed.", lines.get(0));
    assertEquals("  to  runs    next     gap       odds  for 80 %  song", lines.get(2));
    assertTrue(
        lines.get(4).matches("   3     -    \\d:\\d\\d    0:40 +(under )?\\d+ %  .{8}  Late Bus"),
        lines.get(4));
  }

  @Test
  void theOverviewTellsOddsBeforeAndNow() {
    List<String> lines = lines(44, 38, 35, 31, 29);
    int head = lines.indexOf("  to  runs    next     gap       odds     before  for 80 %  song");
    assertTrue(
        lines
            .get(head + 1)
            .matches("   2     5    0:\\d\\d    0:30 +\\d+ % +\\d+ %  .{8}  Two Kettles"),
        lines.toString());
  }

  /** Who wants to be surer needs more runs. */
  @Test
  void theOddsThatAreWantedMayBeOthers() {
    List<String> lines = summary(80, 0.95, 44, 38, 35, 31, 29);
    assertTrue(
        lines.contains("  to  runs    next     gap       odds     before  for 95 %  song"),
        lines.toString());
    assertTrue(
        lines.stream().anyMatch(line -> line.contains(" before). For 95 % about ")),
        lines.toString());
    assertTrue(runsFor(0.95) > runsFor(0.6), lines.toString());
  }

  private static int runsFor(double safe) {
    return new Standing(
            CueSheet.of(PLAN, Pace.estimated()).cues().get(1),
            Outlook.of(30, 0.3, List.of(44.0, 38.0, 35.0)))
        .needed(safe)
        .likely();
  }

  /** Columns would break anywhere on a telephone; there each changeover is a sentence. */
  @Test
  void aNarrowScreenIsToldInSentencesWhatStandsInColumns() {
    List<String> lines = linesOf(40, 44, 38, 35, 31, 29);
    assertTrue(lines.stream().noneMatch(line -> line.contains("  runs  ")), lines.toString());
    assertTrue(
        lines.stream()
            .anyMatch(
                line ->
                    line.matches(
                        "To 2 Two Kettles: 5 runs, next about \\d+ s of 30 s; odds \\d+ %"
                            + " \\(\\d+ % before\\); for 80 %: (safe|hardly|\\d+ more)\\.")),
        lines.toString());
    assertTrue(
        lines.stream().anyMatch(line -> line.startsWith("To 3 Late Bus: never timed, next about ")),
        lines.toString());
  }

  /** It differs from the total of the plan, and the musician sees both. */
  @Test
  void whatWasNeverTimedIsSaidToCountAsAFirstRun() {
    assertTrue(
        lines(44, 38)
            .contains(
                "What was never timed counts here as a first run takes; plan counts practised"
                    + " hands."));
  }

  @Test
  void oneThatIsSafeNeedsNoMoreRuns() {
    List<String> lines = lines(18, 17, 17, 16, 16, 16, 16, 16);
    assertTrue(
        lines.stream().anyMatch(line -> line.endsWith("Safe: 80 % or more.")), lines.toString());
  }

  /** One point is no course, and a time that was never taken is not safe. */
  @Test
  void oneRunIsToldInWords() {
    List<String> lines = lines(17);
    int from = lines.indexOf("To 2 Two Kettles: 6 moves, gap 30 s");
    assertTrue(
        lines.get(from + 1).startsWith("  1 run of 17 s, 1 slip; next about "), lines.toString());
    assertTrue(
        lines.stream().anyMatch(line -> line.matches("   3     - .* (try it|\\d+ more) +Late Bus")),
        lines.toString());
  }

  @Test
  void theSecondsLearnedOfTheHandsAreTold() {
    String lines = String.join("\n", lines(44, 38, 35, 31, 29));
    assertTrue(
        lines.matches(
            "(?s).*\nSeconds of your hands, and in brackets what was thought before the first run:"
                + " to read a line \\d\\.\\d \\(\\d\\.\\d\\), .*, the main level .*\n"
                + "Of the time of a first run the second takes some \\d+ %, the fifth \\d+ %\\..*"),
        lines);
  }

  /** The nine in ten of those who learn least need more runs than anybody counts. */
  @Test
  void howManyMoreRunsIsSaidInPlainWords() {
    assertTrue(
        lines(44, 42).stream()
            .anyMatch(
                line ->
                    line.matches(
                        ".* about \\d+ more runs?: \\d+ if it goes well, (\\d+ if it goes badly|but"
                            + " practice alone may not do it)\\.")),
        lines(44, 42).toString());
  }

  @Test
  void theEndSaysWhatToPractiseNext() {
    List<String> lines = lines(18, 17, 17, 16, 16, 16, 16, 16);
    assertTrue(
        lines
            .get(lines.size() - 1)
            .startsWith("Practise next: the way to 3 Late Bus; one more run "),
        lines.toString());
  }

  @Test
  void songsWithoutALengthAreNamed() {
    assertTrue(
        lines()
            .contains(
                "Counted as nothing, for want of a length: Plain Morning, Two Kettles, Late Bus"));
  }

  @Test
  void oddsAreNeverSurerThanTheyCanBe() {
    assertEquals("under 1 %", Odds.text(0.001));
    assertEquals("1 %", Odds.text(0.012));
    assertEquals("62 %", Odds.text(0.6249));
    assertEquals("over 99 %", Odds.text(0.9999));
  }
}
