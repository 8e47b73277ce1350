package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.plan.sample.FullSets;
import entracte.plan.sample.Sample;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a search goes by where the bag is short; {@link ToolSwitchingTest} has published cases. */
@DisplayName("What a short bag is reckoned to cost")
class ShortageTest {
  private static final double NEAR = 0.1;

  @ParameterizedTest(name = "is near the truth in full set {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void isNearTheTruth(long seed) {
    Sample sample = FullSets.tight(seed, 6, 10);
    Problem problem = new Problem(sample.set(), sample.start());
    Annealer annealer = new Annealer(problem, first(problem), Stock.TIGHT, seed);
    annealer.anneal(20_000, 1, () -> false);
    Casting casting = annealer.best();
    int reckoned = moves(problem, casting, Stock.TIGHT);
    int truth = new Finish(problem).plan(casting).orElseThrow().moves();
    assertTrue(moves(problem, casting, Stock.LOOSE) <= reckoned, "a short bag saves nothing");
    assertEquals(truth, reckoned, NEAR * truth);
  }

  @ParameterizedTest(name = "is nothing in full set {0} where there are cords enough")
  @ValueSource(longs = {1, 2, 3})
  void isNothingWhereThereAreCordsEnough(long seed) {
    Sample sample = FullSets.loose(seed, 6, 10);
    Problem problem = new Problem(sample.set(), sample.start());
    Casting casting = first(problem);
    assertEquals(moves(problem, casting, Stock.LOOSE), moves(problem, casting, Stock.TIGHT));
  }

  private static int moves(Problem problem, Casting casting, Stock stock) {
    return Weights.changeoverMoves(new Ledger(problem, casting.copy(), stock).moves());
  }

  private static Casting first(Problem problem) {
    return ((FirstCasting.Found.Cast) new FirstCasting(problem).find()).casting();
  }
}
