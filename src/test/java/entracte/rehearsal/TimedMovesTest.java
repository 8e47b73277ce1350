package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.CueSheet;
import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.plan.Plan;
import entracte.rehearsal.TimedMoves.Timed;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Times from the stage. The way to song 2 of {@link KitchenDances} has seven steps. */
class TimedMovesTest {
  private static final Plan PLAN = KitchenDances.plan();
  private static final CueSheet SHEET = CueSheet.of(PLAN, Pace.estimated());
  private static final Instant WHEN = Instant.parse("2026-03-01T22:00:00Z");

  @TempDir Path folder;

  private final List<String> asked = new ArrayList<>();

  private Taken bringIn(List<Timed> moves) throws IOException {
    return bringIn(moves, false);
  }

  private Taken bringIn(List<Timed> moves, boolean sure) throws IOException {
    return TimedMoves.into(
        RunLog.beside(folder),
        moves,
        SHEET,
        PLAN.setList().rig(),
        doubt -> asked.add(doubt) && sure,
        WHEN);
  }

  private static List<Timed> run(String changeover, int from, int to) {
    List<Timed> moves = new ArrayList<>();
    for (int move = from; move <= to; move++) {
      moves.add(new Timed(1, changeover, move, move));
    }
    return moves;
  }

  /** One file of all these, each move on a line of its own. */
  @SafeVarargs
  private static List<Timed> file(List<Timed>... runs) {
    List<Timed> lines = new ArrayList<>();
    Stream.of(runs)
        .flatMap(List::stream)
        .map(t -> new Timed(lines.size() + 1, t.changeover(), t.move(), t.seconds()))
        .forEach(lines::add);
    return lines;
  }

  @Test
  void aWholeRunIsAddedAsPlayedOnStage() throws IOException {
    assertEquals(List.of("Added 1 run."), bringIn(run("Two Kettles", 1, 7)).lines());
    Run run = RunLog.beside(folder).read().runs().get(0);
    assertEquals(Run.Where.STAGE, run.where());
    assertEquals(28, run.seconds());
    assertEquals(7, run.each().size());
    assertEquals(Mark.of(SHEET.cues().get(1).steps()), run.mark());
  }

  @Test
  void theSongsNumberWillDo() throws IOException {
    assertEquals(new Taken(1, List.of()), bringIn(run("2", 1, 7)));
  }

  @Test
  void whatIsLeftOutIsToldWithItsLinesAndTheReason() throws IOException {
    List<Timed> moves =
        file(
            run("2", 1, 4),
            run("2", 1, 8),
            run("2", 2, 7),
            run("no such song", 1, 7),
            run("1", 1, 3),
            run("Plain Morning", 1, 1));
    assertEquals(
        List.of(
            "Added 1 run. Left out:",
            "  lines 1 to 4: moves 1 to 4 of a run to Two Kettles, which has moves 1 to 7",
            "  line 12: move 8 of a run to Two Kettles, which has moves 1 to 7",
            "  lines 13 to 18: moves 2 to 7 of a run to Two Kettles, which has moves 1 to 7",
            "  lines 19 to 25: the set has no song no such song",
            "  lines 26 to 29: the set-up for Plain Morning is no changeover"),
        bringIn(moves).lines());
  }

  /** What was added lies between the two, so they are not one stretch of lines. */
  @Test
  void linesLeftOutForTheSameReasonAreToldTogetherUnlessSomethingWasAddedBetween()
      throws IOException {
    bringIn(run("2", 1, 7));
    List<Timed> slower = new ArrayList<>();
    run("2", 1, 7).forEach(t -> slower.add(new Timed(1, "2", t.move(), t.seconds() + 1)));
    List<Timed> known = run("2", 1, 7);
    assertEquals(
        List.of(
            "Added 1 run. Left out:",
            "  lines 1 to 14: in the log already",
            "  lines 22 to 28: in the log already"),
        bringIn(file(known, known, slower, known)).lines());
  }

  @Test
  void ofAHeapOfReasonsTheFirstAreToldAndTheRestIsCounted() throws IOException {
    List<Timed> moves = new ArrayList<>();
    for (int line = 1; line <= 20; line++) {
      moves.add(new Timed(line, "song " + line, 1, 3));
    }
    List<String> lines = bringIn(moves).lines();
    assertEquals("  line 8: the set has no song song 8", lines.get(8));
    assertEquals("  and 12 more lines", lines.get(9));
    assertEquals(10, lines.size());
  }

  /** Two runs of the same seconds in one file are two; the same file once more is none. */
  @Test
  void theSameFileOnceMoreAddsNothing() throws IOException {
    List<Timed> moves = file(run("2", 1, 7), run("Two Kettles", 1, 7));
    assertEquals(new Taken(2, List.of()), bringIn(moves));
    assertEquals(
        List.of("Added 0 runs. Left out:", "  lines 1 to 14: in the log already"),
        bringIn(moves).lines());
  }

  @Test
  void whatWasWithdrawnIsNotAddedAgain() throws IOException {
    bringIn(run("2", 1, 7));
    RunLog log = RunLog.beside(folder);
    log.withdraw(log.read().runs().get(0));
    assertEquals(0, bringIn(run("2", 1, 7)).runs());
    assertEquals(List.of(), log.read().runs());
  }

  @Test
  void aRunThatIsHardlyPossibleNeedsAClearYes() throws IOException {
    List<Timed> moves = new ArrayList<>();
    for (int move = 1; move <= 7; move++) {
      moves.add(new Timed(move, "2", move, 0.1));
    }
    assertEquals(
        List.of("Added 0 runs. Left out:", "  lines 1 to 7: far too quick"),
        bringIn(moves).lines());
    assertTrue(
        asked
            .get(0)
            .matches("A run to Two Kettles took 0\\.7 s, where \\d+ s were to be expected\\."),
        asked.toString());
    assertEquals(1, bringIn(moves, true).runs());
  }
}
