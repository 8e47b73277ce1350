package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.plan.sample.FullSets;
import entracte.plan.sample.Sample;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What the quick look says, beside the exact cost. */
@DisplayName("The quick look")
class QuickLookTest {
  private static final int STEPS = 20_000;

  @Test
  @DisplayName("hardly ever calls a change hopeless that costs less")
  void hardlyEverCallsAChangeHopelessThatCostsLess() {
    Sample sample = FullSets.loose(3, 8, 14);
    Problem problem = new Problem(sample.set(), sample.start());
    Annealer annealer = new Annealer(problem, first(problem), Stock.LOOSE, 3);
    annealer.anneal(STEPS, 1, () -> false);
    Ledger ledger = new Ledger(problem, annealer.best().copy(), Stock.LOOSE);
    Moves moves = new Moves(problem, ledger, new SplittableRandom(3));
    QuickLook look = new QuickLook(ledger);
    long before = ledger.cost();
    int hopeless = 0;
    int wrong = 0;
    for (int step = 0; step < STEPS; step++) {
      if (!moves.propose()) {
        ledger.edits().clear();
        continue;
      }
      boolean isHopeless = look.lost(moves.from(), moves.to()) >= 2;
      ledger.apply();
      if (isHopeless) {
        hopeless++;
        wrong += ledger.cost() < before ? 1 : 0;
      }
      ledger.undo();
    }
    assertTrue(hopeless > STEPS / 10, "only " + hopeless + " looked hopeless");
    assertTrue(wrong * 200 < hopeless, wrong + " of " + hopeless + " cost less all the same");
  }

  @Test
  @DisplayName("sees as many cords lost by a change as are won back by the opposite one")
  void seesTheOppositeOfTheOppositeChange() {
    Sample sample = FullSets.loose(4, 8, 14);
    Problem problem = new Problem(sample.set(), sample.start());
    Ledger ledger = new Ledger(problem, first(problem).copy(), Stock.LOOSE);
    Moves moves = new Moves(problem, ledger, new SplittableRandom(4));
    QuickLook look = new QuickLook(ledger);
    int different = 0;
    for (int step = 0; step < 2_000; step++) {
      if (moves.propose() && moves.to() == moves.from() + 1) {
        int lost = look.lost(moves.from(), moves.to());
        ledger.apply();
        assertEquals(-lost, look.lost(moves.from(), moves.to()), "after step " + step);
        different += lost != 0 ? 1 : 0;
        ledger.accept();
      } else {
        ledger.edits().clear();
      }
    }
    assertTrue(different > 100, "only " + different + " changes lost or won a cord");
  }

  private static Casting first(Problem problem) {
    return ((FirstCasting.Found.Cast) new FirstCasting(problem).find()).casting();
  }
}
