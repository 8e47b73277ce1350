package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.plan.sample.RandomSets;
import entracte.plan.sample.Sample;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The ledger works out only what a change can reach; a fresh one works out everything. */
@DisplayName("The cost kept change by change")
class LedgerTest {
  private static final int STEPS = 400;

  @ParameterizedTest(name = "of random set {0} is that of a fresh ledger after every change")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void isThatOfAFreshLedger(long seed) {
    Ledger ledger = ledger(seed, Stock.LOOSE);
    Moves moves = new Moves(ledger.layout.problem, ledger, new SplittableRandom(seed));
    int changes = 0;
    for (int step = 0; step < STEPS; step++) {
      if (moves.propose()) {
        ledger.apply();
        changes++;
        assertEquals(fresh(ledger, Stock.LOOSE).cost(), ledger.cost(), "after step " + step);
        ledger.accept();
      } else {
        ledger.edits().clear();
      }
    }
    assertTrue(changes > STEPS / 20, "only " + changes + " changes were tried");
  }

  @ParameterizedTest(name = "of random set {0} is what it was once a change is taken back")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void isWhatItWasOnceAChangeIsTakenBack(long seed) {
    for (Stock stock : Stock.values()) {
      Ledger ledger = ledger(seed, stock);
      Moves moves = new Moves(ledger.layout.problem, ledger, new SplittableRandom(seed));
      long before = ledger.cost();
      for (int step = 0; step < STEPS; step++) {
        if (moves.propose()) {
          ledger.apply();
          ledger.undo();
        } else {
          ledger.edits().clear();
        }
        assertEquals(before, ledger.cost());
      }
      assertEquals(before, fresh(ledger, stock).cost());
    }
  }

  private static Ledger ledger(long seed, Stock stock) {
    Sample sample = RandomSets.any(seed, 3 + (int) (seed % 5), 7 + (int) (seed % 6));
    Problem problem = new Problem(sample.set(), sample.start());
    FirstCasting.Found found = new FirstCasting(problem).find();
    return new Ledger(problem, ((FirstCasting.Found.Cast) found).casting(), stock);
  }

  private static Ledger fresh(Ledger ledger, Stock stock) {
    return new Ledger(ledger.layout.problem, ledger.layout.casting.copy(), stock);
  }
}
