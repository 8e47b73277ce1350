package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.Checker;
import entracte.check.PlayableSet;
import entracte.cue.CueSheet;
import entracte.cue.Pace;
import entracte.journal.JournalFile;
import entracte.plan.Options;
import entracte.plan.Plan;
import entracte.plan.Planner;
import entracte.plan.Result;
import entracte.read.ReadSet;
import entracte.read.SetReader;
import entracte.rehearsal.RunLog;
import entracte.stage.Event;
import entracte.stage.Input;
import entracte.stage.Show;
import entracte.stage.TrueRig;
import entracte.stage.Way;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rehearsing the kitchen table, typed; each look at the clock finds it a second on. */
class RehearseTest {
  /** The way to Bread Clock. */
  private static final int STEPS = 9;

  @TempDir Path folder;

  private final Typist typist = new Typist();
  private String set;

  @BeforeEach
  void copyTheSet() throws IOException {
    Path from = Path.of("sets/kitchen-table");
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
        Path to = folder.resolve(from.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
    set = folder.toString();
  }

  private void rehearseOnce() {
    String enters = "\n".repeat(2 + STEPS);
    assertEquals(0, typist.hearing(enters + "y\nq\n").type("rehearse", set, "--to", "2"));
  }

  @Test
  void aRunIsTimedLoggedAndSummedUp() throws IOException {
    rehearseOnce();
    assertTrue(typist.out().contains("9.0 s; 36 s to spare.\n"), typist.out());
    assertTrue(typist.out().contains("Kitchen Table. Times are learned from 1 timed run.\n"));
    List<String> log = Files.readAllLines(folder.resolve("rehearsal.log"));
    assertEquals(3, log.size());
    assertTrue(log.get(2).contains("\tto: Bread Clock\t"), log.get(2));
  }

  @Test
  void thePlanAndTheSheetThenUseWhatWasLearned() throws IOException {
    typist.type("plan", set, "-q");
    String before = typist.out();
    rehearseOnce();
    typist.type("plan", set, "-q");
    assertTrue(typist.out().endsWith("Times are learned from 1 timed run.\n"), typist.out());
    assertTrue(!before.equals(typist.out()));
    Path sheet = folder.resolve("sheet.txt");
    assertEquals(0, typist.type("sheet", set, "-o", sheet.toString()));
    assertTrue(Files.readString(sheet).contains("Times are learned from 1 timed run."));
    typist.type("plan", set, "--json");
    assertTrue(typist.out().contains("\"aboutTimes\": \"Times are learned from 1 timed run.\""));
    assertTrue(typist.out().contains("\"runs\": 1"));
  }

  @Test
  void theSummaryAloneAsksNothing() {
    rehearseOnce();
    assertEquals(0, typist.hearing("").type("rehearse", set, "--summary"));
    assertTrue(typist.out().contains("To 2 Bread Clock: "), typist.out());
    assertTrue(typist.out().lines().allMatch(line -> line.length() <= 80), typist.out());
  }

  @Test
  void theTimesGoToASpreadsheet() {
    rehearseOnce();
    assertEquals(0, typist.type("rehearse", set, "--csv"));
    List<String> lines = typist.out().lines().toList();
    assertEquals("when,where,to,moves,run,seconds,expected,slips", lines.get(0));
    assertEquals(2, lines.size());
  }

  @Test
  void timesFromTheStageAreAdded() throws IOException {
    Path times = folder.resolve("times.csv");
    StringBuilder lines = new StringBuilder();
    for (int move = 1; move <= STEPS; move++) {
      lines.append("Bread Clock, ").append(move).append(", 4.5\n");
    }
    Files.writeString(times, lines + "Bread Clock, 1, 2\n");
    assertEquals(0, typist.type("rehearse", set, "--import", times.toString()));
    assertEquals(
        """
        Added 1 run. Left out:
          line 10: move 1 of a run to Bread Clock, which has moves 1 to 9
        """,
        typist.out());
    assertTrue(Files.readString(folder.resolve("rehearsal.log")).contains("\tstage\t"));
  }

  /** A night on the stage's journal: the set-up, Kettle, and the way to Bread Clock. */
  @Test
  void theTimesOfANightOnStageAreAdded() throws IOException {
    playANight(folder.resolve("stage.journal"));
    assertEquals(0, typist.type("rehearse", set, "--nights"));
    assertEquals("Added 1 run.\n", typist.out());
    String log = Files.readString(folder.resolve("rehearsal.log"));
    assertTrue(log.contains("\tstage\tto: Bread Clock\t"), log);
    assertTrue(log.contains("\ttook: 36.00\t"), log);
    typist.type("rehearse", set, "--nights");
    assertEquals("Added 0 runs; 1 was in the log already.\n", typist.out());
    typist.type("rehearse", set, "--summary");
    assertTrue(typist.out().contains("  1 run of 36 s;"), typist.out());
  }

  /** Each press comes four seconds after the one before. */
  private void playANight(Path file) throws IOException {
    ReadSet read = SetReader.read(folder);
    PlayableSet playable =
        Checker.check(read.setList().orElseThrow(), read.places()).set().orElseThrow();
    Show show = ShowMaker.show(playable.setList());
    Plan plan = ((Result.Planned) Planner.plan(playable, Options.defaults())).plan();
    List<Way> ways = new ArrayList<>();
    CueSheet.of(plan, Pace.estimated()).cues().forEach(cue -> ways.add(Way.of(ways.size(), cue)));
    List<Integer> order = List.of(0, 1, 2);
    try (JournalFile journal = JournalFile.open(file)) {
      journal.add(new Event.Begun(0, show.fingerprint(), order, TrueRig.bare()));
      journal.add(new Event.Planned(0, 1, order, ways, ""));
      int presses = ways.get(0).moves().size() + 2 + STEPS + 1;
      for (int press = 1; press <= presses; press++) {
        journal.add(new Event.Pressed(press * 4000L, Input.NEXT));
      }
    }
  }

  @Test
  void aNightOfAnotherListOfSongsIsLeftOut() throws IOException {
    playANight(folder.resolve("stage-1.journal"));
    Path file = folder.resolve("set.yaml");
    Files.writeString(file, Files.readString(file).replace("song: Kettle", "song: Teapot"));
    assertEquals(0, typist.type("rehearse", set, "--nights"));
    assertEquals(
        """
        stage-1.journal is of another list of songs and was left out.
        Added 0 runs.
        """,
        typist.out());
  }

  @Test
  void timesThatAreNoneAreRefused() throws IOException {
    Path times = folder.resolve("times.csv");
    Files.writeString(times, "Bread Clock\n");
    assertEquals(1, typist.type("rehearse", set, "--import", times.toString()));
    assertTrue(
        typist.err().contains("times.csv:1:12: error: a line has three fields, this one 1 field"),
        typist.err());
    assertTrue(typist.err().endsWith("entracte: nothing was added; mend the file first\n"));
    assertEquals(3, typist.type("rehearse", set, "--import", times + "x"));
    assertTrue(typist.err().startsWith("entracte: there is no " + times + "x\n"), typist.err());
  }

  @Test
  void aSongThatIsNotInTheSetIsRefused() {
    assertEquals(2, typist.type("rehearse", set, "--to", "Bred Clock"));
    assertEquals(
        """
        entracte: the set has no song Bred Clock
          Did you mean "Bread Clock"? Its number will do, 1 to 3.
        """,
        typist.err());
  }

  /** The search takes its time, and with too little of it finds nothing: that must hide no name. */
  @Test
  void namesAreCheckedBeforeTheSearch() {
    String none = "0.000001";
    assertEquals(2, typist.type("rehearse", set, "--to", "9", "--seconds", none));
    assertEquals(2, typist.type("rehearse", set, "--stands", "Nowhere", "--seconds", none));
    assertTrue(typist.err().startsWith("entracte: the set has no song Nowhere\n"));
    assertEquals(3, typist.type("rehearse", set, "--import", "nowhere.csv", "--seconds", none));
    assertEquals(0, typist.type("rehearse", set, "--nights", "--seconds", none));
  }

  /** Whoever has practised a way must find it again: times alone make no other plan. */
  @Test
  void whatWasTimedChangesNoWay() {
    typist.type("plan", set, "--json");
    String before = moves(typist.out());
    rehearseOnce();
    typist.type("plan", set, "--json");
    assertEquals(before, moves(typist.out()));
  }

  private static String moves(String json) {
    return json.lines().filter(line -> line.contains("\"text\":")).toList().toString();
  }

  @Test
  void linesOfTheLogThatCannotBeReadAreToldWithTheSummary() throws IOException {
    rehearseOnce();
    Path log = folder.resolve("rehearsal.log");
    Files.writeString(log, Files.readString(log) + "what is this\n# end\n");
    typist.type("rehearse", set, "--summary");
    assertEquals(
        "entracte: Line 4 of rehearsal.log cannot be read and is left out.\n", typist.err());
  }

  @Test
  void planSaysFromHowManyRunsTheSecondsOfAChangeoverCome() {
    typist.type("plan", set);
    assertTrue(!typist.out().contains("run)") && !typist.out().contains("takes        runs"));
    rehearseOnce();
    typist.type("plan", set);
    String out = typist.out();
    assertTrue(
        out.matches("(?s).*\nTo 2 Bread Clock: 7 moves, about \\d+ s \\(1 run\\) of .*"), out);
    assertTrue(out.matches("(?s).*\n     song +moves  takes +runs  gap\n.*"), out);
    assertTrue(out.matches("(?s).*\n  2  Bread Clock +7  \\d+ s +1  45 s\n.*"), out);
    assertTrue(out.matches("(?s).*\n  3  Blue Enamel +17  .{12}    -  1 min 15 s\n.*"), out);
  }

  @Test
  void whereNoNightWasPlayedThereIsNothingToAdd() {
    assertEquals(0, typist.type("rehearse", set, "--nights"));
    assertEquals("No changeover was played in a stage journal beside the set.\n", typist.out());
  }

  @Test
  void nobodyToAnswerEndsItWithoutALog() {
    assertEquals(0, typist.hearing("").type("rehearse", set, "-q"));
    assertTrue(!Files.exists(folder.resolve("rehearsal.log")));
  }

  /** In our own words: what the system says is for programmers. */
  @Test
  void aLogThatCannotBeReadIsTrouble() throws IOException {
    Path log = folder.resolve("rehearsal.log");
    Files.createDirectory(log);
    for (String command : List.of("plan", "rehearse")) {
      assertEquals(3, typist.hearing("").type(command, set));
      assertEquals(
          "entracte: the rehearsal log cannot be used: " + log + " is a folder\n  Move it aside.\n",
          typist.err());
    }
  }

  @Test
  void aDiskThatTakesNothingIsToldInOurOwnWords() {
    RunLog log = RunLog.beside(folder);
    Stop full = Player.trouble(log, new IOException("No space left on device"));
    assertEquals(
        "the rehearsal log cannot be used: " + log.file() + " cannot be read or written",
        full.getMessage());
    Stop denied = Player.trouble(log, new AccessDeniedException("x"));
    assertEquals("Look at the permissions of the file and of its folder.", denied.advice());
  }

  @Test
  void aRunThatHardlyAnyHandsCouldPlayIsNotWrittenDownUnasked() {
    String enters = "\n".repeat(3);
    assertEquals(0, typist.hearing(enters + "q\n").type("rehearse", set, "--to", "2", "--whole"));
    assertTrue(
        typist
            .out()
            .contains(
                """
                1.0 s is far quicker than the 30 s that were to be expected. Was that the whole
                  changeover?
                y writes it down, Enter leaves it out, r once more, q ends:
                """),
        typist.out());
    assertTrue(!Files.exists(folder.resolve("rehearsal.log")));
  }

  @Test
  void theRigMayStandAsASongHasLeftIt() {
    assertEquals(
        0,
        typist
            .hearing("\n".repeat(1 + STEPS) + "q\n")
            .type("rehearse", set, "--to", "2", "--stands", "Kettle"));
    assertTrue(!typist.out().contains("Bring the rig"), typist.out());
    assertTrue(
        typist
            .out()
            .contains("The rig stands as Bread Clock leaves it. To go on from there next time:"),
        typist.out());
  }

  @Test
  void theOddsThatAreWantedMayBeSaid() {
    rehearseOnce();
    assertEquals(0, typist.hearing("").type("rehearse", set, "--summary", "--odds", "95 %"));
    assertTrue(typist.out().contains("  for 95 %  song\n"), typist.out());
    assertEquals(2, typist.type("rehearse", set, "--odds", "100"));
    assertTrue(typist.err().contains("odds are from 1 to 99 of a hundred, not 100"), typist.err());
  }

  @Test
  void noneOfTheWorstIsRefused() {
    assertEquals(2, typist.type("rehearse", set, "--worst", "0"));
    assertEquals("entracte: --worst 0 leaves nothing\n  Give 1 or more.\n", typist.err());
  }

  @Test
  void aPlanForTheFewestSecondsSaysWhatIsProvenOfThemAndWhatItSaves() {
    assertEquals(0, typist.type("plan", set, "-q", "--aim", "fastest"));
    String told = typist.out().replaceAll("\\s+", " ");
    assertTrue(
        told.contains("Proven: no plan is quicker for these hands, each move taken at its average"),
        typist.out());
    assertTrue(
        told.endsWith(
            "Against the plan of the fewest moves (24 moves, about 1 min 29 s) it saves nothing:"
                + " the moves alone take 52.8 s in both. "),
        typist.out());
  }
}
