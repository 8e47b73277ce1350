package entracte.plan;

import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * An order with the best casting known for it.
 *
 * @param order the songs, from 0, as numbered in the written order
 * @param casting of the songs in this order
 * @param cost the weight of all moves
 */
record OrderTrial(int[] order, Casting casting, long cost) {

  /** Whether this is the better one; of equals the first tried is kept. */
  boolean isBetterThan(OrderTrial other) {
    return cost < other.cost;
  }

  /** The casting of this trial taken over to another order of the same songs. */
  Casting castingFor(int[] other) {
    int[] placeOf = new int[order.length];
    for (int k = 0; k < order.length; k++) {
      placeOf[order[k]] = k;
    }
    int[] places = new int[other.length];
    for (int k = 0; k < other.length; k++) {
      places[k] = placeOf[other[k]];
    }
    return casting.inOrder(places);
  }

  /** Anneals castings for an order, from a casting of it. */
  static OrderTrial of(Effort effort, int[] order, Casting start) {
    Problem problem = effort.problem().inOrder(order);
    Annealer annealer = new Annealer(problem, start, effort.stock(), effort.seed());
    annealer.anneal(effort.steps(), effort.heat(), effort.stop());
    return new OrderTrial(order, annealer.best(), annealer.bestCost());
  }

  /**
   * How hard to try.
   *
   * @param problem in the written order
   * @param heat as {@link Annealer#anneal} takes it
   */
  record Effort(
      Problem problem, Stock stock, long seed, long steps, double heat, BooleanSupplier stop) {}

  /** The plan of this order and casting, if the bag can serve it. */
  Optional<Plan> plan(Problem written) {
    return new Finish(written.inOrder(order)).plan(casting);
  }
}
