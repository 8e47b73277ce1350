package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.KitchenDances;
import entracte.plan.DirectWay;
import entracte.plan.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Rehearsals of {@link KitchenDances}, typed line by line; each answer takes three seconds, or 25
 * where one press is for the whole.
 */
class PracticeTest {
  private static final Plan PLAN = KitchenDances.plan();

  /** Level down, two cords, two knobs, one tuning, level up. */
  private static final int STEPS_TO_KETTLES = 7;

  @TempDir Path folder;

  private TypedDialogue rehearse(Choice choice, boolean stepByStep, String... answers)
      throws IOException {
    TypedDialogue dialogue = new TypedDialogue(stepByStep ? 3 : 25, Arrays.asList(answers));
    Practice.Settings settings = new Practice.Settings(choice, stepByStep, DirectWay.START);
    Practice.rehearse(PLAN, RunLog.beside(folder), settings, dialogue, dialogue.clock());
    return dialogue;
  }

  /** Some answers with a comma between, then Enter so often, then some more. */
  private static String[] typed(String before, int enters, String... after) {
    List<String> answers = new ArrayList<>();
    if (!before.isEmpty()) {
      answers.addAll(List.of(before.split(",", -1)));
    }
    answers.addAll(Collections.nCopies(enters, ""));
    answers.addAll(List.of(after));
    return answers.toArray(String[]::new);
  }

  private List<Run> runs() throws IOException {
    return RunLog.beside(folder).read().runs();
  }

  @Test
  void aRunStepByStepReadsLikeThis() throws IOException {
    TypedDialogue dialogue = rehearse(new Choice.To(2), true, typed("", 2 + STEPS_TO_KETTLES, "q"));
    List<String> said = dialogue.said();
    int from = said.indexOf("Enter starts the clock, q ends: ");
    assertEquals(
        """
        Enter starts the clock, q ends:\s
            1/7  LOWER the main level before any plug or switch moves\s
            2/7  MOVE from keys pitch 1, to keys pitch 2; keep the plug in osc 1 pitch 1\s
        """,
        String.join("\n", said.subList(from, from + 3)) + "\n");
    assertEquals("21.0 s; 9 s to spare.", said.get(from + 1 + STEPS_TO_KETTLES));
    assertTrue(said.get(said.size() - 3).startsWith("Odds of the gap next time: "));
    assertTrue(
        said.get(said.size() - 2)
            .startsWith("It tells of your hands as well: the next runs of the other changeovers"),
        said.toString());
    assertEquals(
        "Enter goes on, r once more, w withdraws this time, q ends: ", said.get(said.size() - 1));
  }

  @Test
  void theRigIsBroughtToItsStartFirst() throws IOException {
    List<String> said = rehearse(new Choice.To(2), true, "q").said();
    assertEquals(
        "Bring the rig to where Plain Morning leaves it, without the clock: 13 moves from a rig"
            + " with nothing plugged.",
        said.get(1));
    assertTrue(said.contains("  PLUG mix 1 out, then filter 1 audio"), said.toString());
    assertEquals(List.of(), runs());
  }

  /** A long list scrolls its head off the screen; what is asked for must still be there. */
  @Test
  void theQuestionSaysOnceMoreWhereTheRigIsToStand() throws IOException {
    List<String> said = rehearse(new Choice.To(2), true, "q").said();
    assertEquals(
        "Enter once the rig stands as Plain Morning leaves it, q to end: ",
        said.get(said.size() - 1));
  }

  @Test
  void theKeysAreTaughtOnce() throws IOException {
    List<String> said =
        rehearse(new Choice.All(), true, Collections.nCopies(40, "").toArray(String[]::new)).said();
    assertEquals(2, runs().size());
    assertEquals(1, said.stream().filter(line -> line.startsWith("While the clock runs")).count());
  }

  @Test
  void theFirstTimeIsToldApartFromThatOfPractisedHands() throws IOException {
    List<String> said = rehearse(new Choice.To(2), true, "", "q").said();
    assertTrue(
        said.stream()
            .anyMatch(
                line ->
                    line.matches(
                        "To 2 Two Kettles: 6 moves, about \\d+ s the first time \\(practised,"
                            + " \\d+ s\\); gap 30 s; odds of making it \\d+ %\\.")),
        said.toString());
  }

  @Test
  void aRunIsWrittenDownWithEachStep() throws IOException {
    rehearse(new Choice.To(2), true, typed("", 2 + STEPS_TO_KETTLES, "q"));
    Run run = runs().get(0);
    assertEquals("Two Kettles", run.to());
    assertEquals(21, run.seconds());
    assertEquals(STEPS_TO_KETTLES, run.each().size());
    assertEquals(3, run.each().get(4).seconds());
    assertEquals(run.makeup().total(), sum(run), 0.1);
  }

  private static double sum(Run run) {
    return run.each().stream().mapToDouble(split -> split.makeup().total()).sum();
  }

  @Test
  void onePressMayTimeTheWhole() throws IOException {
    rehearse(new Choice.To(2), false, "", "", "s", "", "q");
    Run run = runs().get(0);
    assertEquals(50, run.seconds());
    assertEquals(1, run.slips());
    assertEquals(List.of(), run.each());
  }

  @Test
  void slipsAndStepsBackKeepTheClockRunning() throws IOException {
    TypedDialogue dialogue =
        rehearse(new Choice.To(2), true, typed(",,,s,u,", STEPS_TO_KETTLES, "q"));
    Run run = runs().get(0);
    assertEquals(1, run.slips());
    assertEquals(3 * (STEPS_TO_KETTLES + 3), run.seconds());
    assertTrue(dialogue.said().contains("30.0 s, 1 slip; 0 s to spare."), "" + dialogue.said());
  }

  @Test
  void aRunThatIsStoppedIsNotWrittenDownAndTheRestIsListed() throws IOException {
    List<String> said = rehearse(new Choice.To(2), true, typed("", 5, "x", "q")).said();
    assertEquals(List.of(), runs());
    int stopped =
        said.indexOf("Stopped, and not written down. What is left to do, so that the rig stands:");
    assertEquals(
        List.of(
            "  TURN mix 1 channel 2 level to 5",
            "  TURN filter 1 cutoff from 4 to 6.5",
            "  TUNE osc 1 (another pitch cord)",
            "  RAISE the main level slowly"),
        said.subList(stopped + 1, stopped + 5));
  }

  @Test
  void onceMoreBringsTheRigBack() throws IOException {
    int once = STEPS_TO_KETTLES;
    String[] answers = typed("", 2 + once, "r");
    List<String> twice = new ArrayList<>(Arrays.asList(answers));
    twice.addAll(Arrays.asList(typed("", 2 + once, "q")));
    List<String> said = rehearse(new Choice.To(2), true, twice.toArray(String[]::new)).said();
    assertEquals(2, runs().size());
    assertTrue(
        said.contains(
            "Bring the rig to where Plain Morning leaves it, without the clock: 5 moves."),
        said.toString());
  }

  /** Cords 1 and 2 hang already where they do in the end; the knobs have not been touched. */
  @Test
  void onceMoreAfterAStopTakesBackOnlyWhatWasDone() throws IOException {
    List<String> said = rehearse(new Choice.To(2), true, typed("", 4, "x", "r", "q")).said();
    int back =
        said.indexOf("Bring the rig to where Plain Morning leaves it, without the clock: 2 moves.");
    assertEquals(
        List.of(
            "  LOWER the main level before any plug or switch moves",
            "  MOVE from keys pitch 2, to keys pitch 1; keep the plug in osc 1 pitch 1",
            "  RAISE the main level slowly"),
        said.subList(back + 1, back + 4));
  }

  @Test
  void whoEndsOnTheWayLeavesTheRigBetweenTwoSongs() throws IOException {
    TypedDialogue dialogue = new TypedDialogue(3, Arrays.asList(typed("", 4, "x", "q")));
    Practice.Settings settings = new Practice.Settings(new Choice.To(2), true, DirectWay.START);
    Practice.Outcome outcome =
        Practice.rehearse(PLAN, RunLog.beside(folder), settings, dialogue, dialogue.clock());
    assertEquals(OptionalInt.empty(), outcome.standing());
  }

  @Test
  void aRunThatIsHardlyPossibleIsAskedAbout() throws IOException {
    TypedDialogue hasty = new TypedDialogue(0.5, Arrays.asList(typed("", 2 + STEPS_TO_KETTLES)));
    Practice.Settings settings = new Practice.Settings(new Choice.To(2), true, DirectWay.START);
    Practice.rehearse(PLAN, RunLog.beside(folder), settings, hasty, hasty.clock());
    assertTrue(
        hasty.said().stream()
            .anyMatch(
                line ->
                    line.matches(
                        "3\\.5 s is far quicker than the \\d+ s that were to be expected\\."
                            + " Was that the whole changeover\\?")),
        hasty.said().toString());
    assertEquals(List.of(), runs());
    String[] kept = typed("", 2 + STEPS_TO_KETTLES, "y", "q");
    TypedDialogue sure = new TypedDialogue(0.5, Arrays.asList(kept));
    Practice.rehearse(PLAN, RunLog.beside(folder), settings, sure, sure.clock());
    assertEquals(3.5, runs().get(0).seconds());
  }

  @Test
  void withoutALogThePlayerMayGoOn() throws IOException {
    Path nowhere = folder.resolve("gone").resolve("rehearsal.log");
    TypedDialogue dialogue = new TypedDialogue(20, List.of("", "", "", "", "w", "q"));
    Practice.Settings settings = new Practice.Settings(new Choice.To(2), false, DirectWay.START);
    Practice.rehearse(PLAN, RunLog.in(nowhere), settings, dialogue, dialogue.clock());
    List<String> said = dialogue.said();
    assertEquals(
        "No time will be kept: "
            + nowhere
            + " may not be read or changed. The odds hold until you end.",
        said.get(0));
    assertEquals("Enter goes on without, q ends: ", said.get(1));
    assertTrue(
        said.contains("This time is not kept: " + nowhere + " cannot be read or written."),
        said.toString());
    assertTrue(said.contains("Withdrawn."), said.toString());
  }

  @Test
  void runsOfAnotherPlanAreToldApart() throws IOException {
    Run other =
        new Run(
            TypedDialogue.BEGIN,
            Run.Where.REHEARSAL,
            "Two Kettles",
            "0000000000",
            50,
            0,
            new Makeup(Map.of(Work.PLUG, 40.0)),
            List.of());
    RunLog.beside(folder).add(other);
    assertTrue(
        rehearse(new Choice.To(2), true, "", "q")
            .said()
            .contains(
                "1 run was of other moves to Two Kettles, before the plan changed; they tell of"
                    + " your hands, but not of these moves."));
  }

  @Test
  void aWithdrawnTimeDoesNotCount() throws IOException {
    rehearse(new Choice.To(2), true, typed("", 2 + STEPS_TO_KETTLES, "w"));
    assertEquals(List.of(), runs());
    assertTrue(Files.readString(folder.resolve("rehearsal.log")).contains("withdrawn"));
  }

  @Test
  void theWholeSetNeedsTheRigBroughtOnlyOnce() throws IOException {
    List<String> said = rehearse(new Choice.All(), false, "", "", "", "", "", "", "").said();
    assertEquals(2, runs().size());
    assertEquals(1, said.stream().filter(line -> line.startsWith("Bring the rig")).count());
  }

  @Test
  void withoutAChoiceItGoesOnUntilThePlayerEndsIt() throws IOException {
    String[] answers = Collections.nCopies(40, "").toArray(String[]::new);
    rehearse(new Choice.MostHelped(), false, answers);
    assertTrue(runs().size() >= 6, "only " + runs().size());
  }

  @Test
  void anotherLetterIsExplained() throws IOException {
    List<String> said = rehearse(new Choice.To(2), true, "", "", "what").said();
    assertTrue(said.contains("Enter: done. s: a slip. u: one step back. x: stop."));
  }

  @Test
  void aLogThatWasCutOffIsNotedAtTheBegin() throws IOException {
    Files.writeString(folder.resolve("rehearsal.log"), "2026-03-01T19:02:11Z\trehears");
    List<String> said = rehearse(new Choice.To(2), true, "q").said();
    assertEquals("The last line of rehearsal.log was cut off and is left out.", said.get(0));
  }

  @Test
  void theSetUpMayBeRehearsedToo() throws IOException {
    List<String> said = rehearse(new Choice.To(1), false, "", "s", "s", "", "q").said();
    assertTrue(said.get(1).startsWith("To 1 Plain Morning: 13 moves, about "), said.toString());
    assertEquals("Plain Morning", runs().get(0).to());
  }
}
