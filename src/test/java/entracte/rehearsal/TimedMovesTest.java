package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import entracte.cue.CueSheet;
import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.plan.Plan;
import entracte.rehearsal.TimedMoves.Imported;
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

  private Imported bringIn(List<Timed> moves) throws IOException {
    return TimedMoves.into(RunLog.beside(folder), moves, SHEET, PLAN.setList().rig(), WHEN);
  }

  private static List<Timed> run(String changeover, int from, int to) {
    List<Timed> moves = new ArrayList<>();
    for (int move = from; move <= to; move++) {
      moves.add(new Timed(changeover, move, move));
    }
    return moves;
  }

  @Test
  void linesAreChangeoverMoveSeconds() {
    assertEquals(
        List.of(new Timed("Two Kettles", 1, 2.5), new Timed("Salt, Pepper", 12, 3)),
        TimedMoves.read(List.of("# a comment", "Two Kettles, 1, 2.5", "", " Salt, Pepper ,12,3 ")));
  }

  @Test
  void aLineThatIsSomethingElseIsRefused() {
    for (String line : List.of("Two Kettles", "a, 1", "a, 0, 2", "a, 1, NaN", "a, 1, -2")) {
      IllegalArgumentException refused =
          assertThrows(
              IllegalArgumentException.class, () -> TimedMoves.read(List.of("#", line)), line);
      assertEquals("line 2 is not: changeover, move, seconds", refused.getMessage());
    }
  }

  @Test
  void aWholeRunIsAddedAsPlayedOnStage() throws IOException {
    assertEquals(new Imported(1, 0), bringIn(run("Two Kettles", 1, 7)));
    Run run = RunLog.beside(folder).read().runs().get(0);
    assertEquals(Run.Where.STAGE, run.where());
    assertEquals(28, run.seconds());
    assertEquals(7, run.each().size());
    assertEquals(Mark.of(SHEET.cues().get(1).steps()), run.mark());
  }

  @Test
  void theSongsNumberWillDo() throws IOException {
    assertEquals(new Imported(1, 0), bringIn(run("2", 1, 7)));
  }

  @Test
  void whatIsNotWholeIsLeftOut() throws IOException {
    List<Timed> moves = new ArrayList<>(run("2", 1, 4));
    moves.addAll(run("2", 1, 7));
    moves.addAll(run("2", 2, 7));
    moves.addAll(run("no such song", 1, 7));
    assertEquals(new Imported(1, 17), bringIn(moves));
  }
}
