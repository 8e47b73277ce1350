package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.plan.DirectWay;
import entracte.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ways between any two songs of {@link KitchenDances}. */
class DetourTest {
  private static final Plan PLAN = KitchenDances.plan();

  @Test
  void theWayToTheNextSongHasTheMovesOfItsChangeover() {
    assertEquals(6, moves(0, 1));
    assertEquals(10, moves(1, 2));
  }

  @Test
  void theWayFromTheStartIsTheSetUp() {
    assertEquals(PLAN.setUpMoves(), moves(DirectWay.START, 0));
  }

  @Test
  void theWayBackUndoesTheChangeover() {
    assertEquals(
        List.of(
            "LOWER the main level before any plug or switch moves",
            "MOVE from keys pitch 2, to keys pitch 1; keep the plug in osc 1 pitch 1",
            "MOVE from mix 1 channel 2 in, to mix 1 channel 1 in; keep the plug in osc 1 saw",
            "TURN filter 1 cutoff from 6.5 to 4",
            "RAISE the main level slowly"),
        Detour.steps(PLAN, 1, 0).stream().map(Step::text).toList());
  }

  @Test
  void nothingMovesFromASongToItself() {
    assertEquals(List.of(), Detour.steps(PLAN, 2, 2));
  }

  @Test
  void leavingASongOutNeverTakesMoreMovesThanPlayingIt() {
    int direct = moves(0, 2);
    assertEquals(true, direct <= moves(0, 1) + moves(1, 2), "took " + direct);
  }

  private static int moves(int from, int to) {
    return Detour.steps(PLAN, from, to).stream().mapToInt(Step::moves).sum();
  }
}
