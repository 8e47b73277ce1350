package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.plan.sample.RandomSets;
import entracte.plan.sample.Sample;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Of modules and strips that nothing tells apart")
class LowestFirstTest {
  @ParameterizedTest(name = "others cost as much in random set {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void othersCostAsMuch(long seed) {
    Sample sample = RandomSets.any(seed, 3 + (int) (seed % 3), 7 + (int) (seed % 6));
    Problem problem = new Problem(sample.set(), sample.start());
    Casting casting = shuffled(problem, seed);
    Casting renamed = new LowestFirst(problem).of(casting);
    assertEquals(cost(problem, casting), cost(problem, renamed));
    assertEquals(
        Arrays.deepToString(renamed.module),
        Arrays.deepToString(new LowestFirst(problem).of(renamed).module));
  }

  @Test
  void theLowestComeFirst() {
    Sample sample = RandomSets.any(3, 4, 9);
    Problem problem = new Problem(sample.set(), sample.start());
    int[] classOf = new Alike(problem).moduleClass;
    Casting renamed = new LowestFirst(problem).of(shuffled(problem, 3));
    boolean[] seen = new boolean[classOf.length];
    for (int[] modules : renamed.module) {
      for (int module : modules) {
        for (int lower = 0; lower < module; lower++) {
          assertTrue(
              seen[lower] || classOf[lower] != classOf[module] || seen[module],
              module + " before " + lower);
        }
        seen[module] = true;
      }
    }
  }

  private static long cost(Problem problem, Casting casting) {
    return new Ledger(problem, casting.copy(), Stock.LOOSE).cost();
  }

  private static Casting shuffled(Problem problem, long seed) {
    Casting first = ((FirstCasting.Found.Cast) new FirstCasting(problem).find()).casting();
    Ledger ledger = new Ledger(problem, first, Stock.LOOSE);
    Moves moves = new Moves(problem, ledger, new SplittableRandom(seed));
    for (int step = 0; step < 500; step++) {
      if (moves.propose()) {
        ledger.apply();
        ledger.accept();
      } else {
        ledger.edits().clear();
      }
    }
    return ledger.layout.casting;
  }
}
