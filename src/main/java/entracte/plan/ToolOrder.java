package entracte.plan;

import entracte.check.PermittedOrders;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;

/**
 * Orders a set that is a tool-switching problem: annealing from several seeds, and for few songs a
 * proof.
 */
final class ToolOrder {
  private static final int SEEDS = 4;
  private static final long STEPS_PER_SONG = 20_000;
  private static final double HOT = 1.5;
  private static final long PROOF_STEPS = 4_000_000;

  /**
   * What was found.
   *
   * @param switchesAtLeast no permitted order has fewer
   */
  record Found(int[] order, int switches, int switchesAtLeast) {}

  private final ToolSwitches tools;
  private final PermittedOrders permitted;
  private final Workers workers;
  private final BooleanSupplier stop;

  ToolOrder(ToolSwitches tools, PermittedOrders permitted, Workers workers, BooleanSupplier stop) {
    this.tools = tools;
    this.permitted = permitted;
    this.workers = workers;
    this.stop = stop;
  }

  /**
   * @param longer how many times the usual steps to take
   */
  Found find(int[] start, long seed, int longer) {
    int[] best = start;
    for (int[] order : annealed(start, seed, longer)) {
      best = tools.of(order) < tools.of(best) ? order : best;
    }
    if (tools.songs() > PathOrders.MOST_SONGS) {
      long all = tools.used(start, start.length);
      int bound = Math.max(0, Long.bitCount(all) - tools.slots());
      return new Found(best, tools.of(best), bound);
    }
    ToolProof proof = new ToolProof(tools, OrderSteps.of(permitted), !permitted.anyForbidden());
    boolean complete = proof.search(best, PROOF_STEPS * longer);
    return new Found(proof.best(), proof.bestCost(), complete ? proof.bestCost() : proof.bound());
  }

  private List<int[]> annealed(int[] start, long seed, int longer) {
    long steps = STEPS_PER_SONG * tools.songs() * longer;
    List<Callable<int[]>> tasks = new ArrayList<>();
    for (int i = 0; i < SEEDS; i++) {
      long own = seed * 1_000_003L + i;
      tasks.add(() -> new OrderAnnealer(permitted, tools::of, HOT).anneal(start, steps, own, stop));
    }
    return workers.all(tasks);
  }
}
