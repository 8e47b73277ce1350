package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.PlayableSet;
import entracte.plan.sample.Feature;
import entracte.plan.sample.RandomSets;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Orders against all orders, one by one. */
class OrdererTest {
  private static final Options SHORT = Options.defaults().withRounds(1);

  private static PlayableSet sample(long seed, int songs) {
    return RandomSets.make(seed, songs, 7, EnumSet.noneOf(Feature.class)).set();
  }

  private static int fewest(PlayableSet set, int[] start) {
    if (start.length == set.parts().size()) {
      return ((Result.Planned) Planner.plan(set.inOrder(start), SHORT)).plan().moves();
    }
    int best = Integer.MAX_VALUE;
    for (int next = 0; next < set.parts().size(); next++) {
      int song = next;
      if (Arrays.stream(start).noneMatch(s -> s == song)) {
        int[] longer = Arrays.copyOf(start, start.length + 1);
        longer[start.length] = next;
        best = Math.min(best, fewest(set, longer));
      }
    }
    return best;
  }

  @Test
  void noOrderIsBetterThanTheOneProposed() {
    for (long seed = 1; seed <= 3; seed++) {
      PlayableSet set = sample(seed, 4);
      Ordered.Found found = (Ordered.Found) Orderer.order(set, Options.defaults());
      int best = fewest(set, new int[0]);
      int moves = found.proposed().plan().moves();
      assertTrue(moves <= best, "seed " + seed + ": " + moves + " moves, " + best + " known");
      assertTrue(found.lowerBound() <= best, "seed " + seed + ": bound " + found.lowerBound());
      assertEquals(List.of(), Verifier.verify(found.proposed().plan()));
    }
  }

  @Test
  void theSameSeedProposesTheSameOrder() {
    PlayableSet set = sample(5, 5);
    Ordered.Found one = (Ordered.Found) Orderer.order(set, SHORT);
    Ordered.Found other = (Ordered.Found) Orderer.order(set, SHORT);
    assertEquals(one.order(), other.order());
    assertEquals(one.proposed().plan().moves(), other.proposed().plan().moves());
  }

  /** Two songs side by side cost the same forwards and backwards, in the exact ledger too. */
  @Test
  void aPairCostsTheSameBackwards() {
    int compared = 0;
    for (long seed = 1; seed <= 6; seed++) {
      Problem problem = new Problem(sample(seed, 2), Start.bare());
      int there = pair(problem);
      int back = pair(problem.inOrder(1, 0));
      assertEquals(there, back, "seed " + seed);
      compared += there > 0 ? 1 : 0;
    }
    assertTrue(compared >= 3, "only " + compared + " pairs with moves");
  }

  private static int pair(Problem problem) {
    WindowProof proof = new WindowProof(problem, new int[2], () -> false);
    int bound = proof.prove(0, Integer.MAX_VALUE, 2_000_000);
    assertTrue(proof.isExact());
    return bound;
  }

  @Test
  void changesOfAnOrderKeepEverySong() {
    java.util.SplittableRandom random = new java.util.SplittableRandom(4);
    OrderChange change = new OrderChange(sample(1, 5).permittedOrders(), random);
    int[] order = {0, 1, 2, 3, 4};
    int different = 0;
    for (int i = 0; i < 500; i++) {
      int[] next = change.of(order);
      different += Arrays.equals(next, order) ? 0 : 1;
      order = next;
      int[] sorted = order.clone();
      Arrays.sort(sorted);
      assertEquals("[0, 1, 2, 3, 4]", Arrays.toString(sorted));
    }
    assertTrue(different > 250, "only " + different + " changes");
  }
}
