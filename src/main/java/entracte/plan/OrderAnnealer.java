package entracte.plan;

import entracte.check.PermittedOrders;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.ToIntFunction;

/**
 * Looks for an order of least cost by simulated annealing (Kirkpatrick, Gelatt and Vecchi 1983),
 * where a cost is worked out in microseconds. It promises nothing. The same seed and steps give the
 * same order.
 */
final class OrderAnnealer {
  private static final double COLD = 0.12;
  private static final int CLOCK_EVERY = 256;

  private final PermittedOrders permitted;
  private final ToIntFunction<int[]> cost;
  private final double hot;

  /**
   * @param hot the cost of a step up that is at first accepted one time in three
   */
  OrderAnnealer(PermittedOrders permitted, ToIntFunction<int[]> cost, double hot) {
    this.permitted = permitted;
    this.cost = cost;
    this.hot = hot;
  }

  int[] anneal(int[] start, long steps, long seed, BooleanSupplier stop) {
    SplittableRandom random = new SplittableRandom(seed);
    OrderChange change = new OrderChange(permitted, random);
    int[] now = start;
    int nowCost = cost.applyAsInt(start);
    int[] best = now;
    int bestCost = nowCost;
    double heat = hot;
    for (long step = 0; step < steps; step++) {
      if (step % CLOCK_EVERY == 0) {
        if (stop.getAsBoolean()) {
          break;
        }
        heat = hot * Math.pow(COLD / hot, (double) step / steps);
      }
      int[] other = change.of(now);
      int otherCost = cost.applyAsInt(other);
      if (otherCost <= nowCost || random.nextDouble() < Math.exp((nowCost - otherCost) / heat)) {
        now = other;
        nowCost = otherCost;
        if (nowCost < bestCost) {
          best = now;
          bestCost = nowCost;
        }
      }
    }
    return best;
  }
}
