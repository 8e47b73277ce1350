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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Times from the stage. The way to song 2 of {@link KitchenDances} has seven steps. */
class TimedMovesTest {
  private static final Plan PLAN = KitchenDances.plan();
  private static final CueSheet SHEET = CueSheet.of(PLAN, Pace.estimated());
  private static final Instant WHEN = Instant.parse("2026-03-01T22:00:00Z");

  @TempDir Path folder;

  private final List<String> asked = new ArrayList<>();

  private Added bringIn(List<Timed> moves) throws IOException {
    return bringIn(moves, false);
  }

  private Added bringIn(List<Timed> moves, boolean sure) throws IOException {
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
      moves.add(new Timed(changeover, move, move));
    }
    return moves;
  }

  @Test
  void aWholeRunIsAddedAsPlayedOnStage() throws IOException {
    assertEquals(new Added(1, 0, 0, 0), bringIn(run("Two Kettles", 1, 7)));
    Run run = RunLog.beside(folder).read().runs().get(0);
    assertEquals(Run.Where.STAGE, run.where());
    assertEquals(28, run.seconds());
    assertEquals(7, run.each().size());
    assertEquals(Mark.of(SHEET.cues().get(1).steps()), run.mark());
  }

  @Test
  void theSongsNumberWillDo() throws IOException {
    assertEquals(new Added(1, 0, 0, 0), bringIn(run("2", 1, 7)));
  }

  @Test
  void whatIsNotWholeIsLeftOut() throws IOException {
    List<Timed> moves = new ArrayList<>(run("2", 1, 4));
    moves.addAll(run("2", 1, 7));
    moves.addAll(run("2", 2, 7));
    moves.addAll(run("no such song", 1, 7));
    assertEquals(new Added(1, 0, 0, 17), bringIn(moves));
  }

  /** Two runs of the same seconds in one file are two; the same file once more is none. */
  @Test
  void theSameFileOnceMoreAddsNothing() throws IOException {
    List<Timed> moves = new ArrayList<>(run("2", 1, 7));
    moves.addAll(run("Two Kettles", 1, 7));
    assertEquals(new Added(2, 0, 0, 0), bringIn(moves));
    assertEquals("Added 0 runs; 2 were in the log already.", bringIn(moves).text());
  }

  @Test
  void whatWasWithdrawnIsNotAddedAgain() throws IOException {
    bringIn(run("2", 1, 7));
    RunLog log = RunLog.beside(folder);
    log.withdraw(log.read().runs().get(0));
    assertEquals(new Added(0, 1, 0, 0), bringIn(run("2", 1, 7)));
  }

  @Test
  void aRunThatIsHardlyPossibleNeedsAClearYes() throws IOException {
    List<Timed> moves = new ArrayList<>();
    for (int move = 1; move <= 7; move++) {
      moves.add(new Timed("2", move, 0.1));
    }
    assertEquals(new Added(0, 0, 1, 0), bringIn(moves));
    assertTrue(
        asked
            .get(0)
            .matches("A run to Two Kettles took 0\\.7 s, where \\d+ s were to be expected\\."),
        asked.toString());
    assertEquals(new Added(1, 0, 0, 0), bringIn(moves, true));
  }
}
