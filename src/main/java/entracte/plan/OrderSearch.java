package entracte.plan;

import entracte.check.PermittedOrders;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;

/**
 * Looks for a good order of a set whose castings are free. What two songs cost at least side by
 * side stands in for what they will cost: it gives the orders to begin with, exactly the cheapest
 * one where there are few songs. Then the best order is changed again and again, by changes that
 * look cheap, and each is judged by annealing castings for it from those of the best. Trials come
 * in batches of one size, so that the same seed finds the same order on any number of cores.
 */
final class OrderSearch {
  private static final int BATCH = 4;
  private static final int BATCHES_PER_ROUND = 12;
  private static final int LOOKS = 6;
  private static final int STARTS = 3;
  private static final long FIRST_STEPS_PER_SONG = 12_000;
  private static final long TRIAL_STEPS_PER_SONG = 2_500;
  private static final long STAND_IN_STEPS = 60_000;
  private static final double STAND_IN_HEAT = 6;
  private static final double WARM = 0.4;

  private final Problem problem;
  private final PermittedOrders permitted;
  private final PairBounds pairs;
  private final Stock stock;
  private final Workers workers;
  private final BooleanSupplier stop;
  private final long seed;

  OrderSearch(
      Problem problem,
      PermittedOrders permitted,
      PairBounds pairs,
      Stock stock,
      Workers workers,
      BooleanSupplier stop,
      long seed) {
    this.problem = problem;
    this.permitted = permitted;
    this.pairs = pairs;
    this.stock = stock;
    this.workers = workers;
    this.stop = stop;
    this.seed = seed;
  }

  /**
   * The best order found.
   *
   * @param start a permitted order with a casting of it
   */
  OrderTrial find(OrderTrial start, int rounds) {
    SplittableRandom random = new SplittableRandom(seed);
    OrderTrial best = best(start, tried(start, starts(start.order()), FIRST_STEPS_PER_SONG, 1));
    OrderChange change = new OrderChange(permitted, random);
    for (long batch = 0; batch < (long) rounds * BATCHES_PER_ROUND && !isStopped(); batch++) {
      List<int[]> orders = new ArrayList<>();
      for (int i = 0; i < BATCH; i++) {
        orders.add(promising(best.order(), change));
      }
      best = best(best, tried(best, orders, TRIAL_STEPS_PER_SONG, WARM));
    }
    return best;
  }

  private boolean isStopped() {
    return stop.getAsBoolean();
  }

  private static OrderTrial best(OrderTrial before, List<OrderTrial> trials) {
    OrderTrial best = before;
    for (OrderTrial trial : trials) {
      best = trial.isBetterThan(best) ? trial : best;
    }
    return best;
  }

  /** The written order, the cheapest by pairs, and some that are nearly so. */
  private List<int[]> starts(int[] written) {
    List<int[]> starts = new ArrayList<>();
    starts.add(written);
    if (problem.songs() <= PathOrders.MOST_SONGS) {
      starts.add(new PathOrders(pairs.steps(), OrderSteps.of(permitted)).order());
    }
    OrderAnnealer annealer = new OrderAnnealer(permitted, pairs::of, STAND_IN_HEAT);
    for (int i = 0; i < STARTS; i++) {
      starts.add(annealer.anneal(written, STAND_IN_STEPS, seed + i, stop));
    }
    return starts;
  }

  /** Of a few changes to an order the one that looks cheapest. */
  private int[] promising(int[] order, OrderChange change) {
    int[] least = change.of(order);
    for (int look = 1; look < LOOKS; look++) {
      int[] other = change.of(order);
      boolean same = java.util.Arrays.equals(least, order);
      boolean isChange = !java.util.Arrays.equals(other, order);
      least = isChange && (same || pairs.of(other) < pairs.of(least)) ? other : least;
    }
    return least;
  }

  private List<OrderTrial> tried(
      OrderTrial from, List<int[]> orders, long stepsPerSong, double heat) {
    List<Callable<OrderTrial>> tasks = new ArrayList<>();
    for (int[] order : orders) {
      OrderTrial.Effort effort =
          new OrderTrial.Effort(problem, stock, seed, stepsPerSong * problem.songs(), heat, stop);
      tasks.add(() -> OrderTrial.of(effort, order, from.castingFor(order)));
    }
    return workers.all(tasks);
  }
}
