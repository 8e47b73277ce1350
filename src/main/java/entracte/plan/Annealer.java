package entracte.plan;

import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Improves a casting by simulated annealing (Kirkpatrick, Gelatt and Vecchi 1983): a change that
 * costs d more is accepted with probability exp(-d/T), while T falls geometrically. It promises
 * nothing, but every cost it sees is exact. The same seed and number of steps give the same
 * casting.
 */
final class Annealer {
  private static final double HOT = 2.5;
  private static final double COLD = 0.18;
  private static final int CLOCK_EVERY = 256;

  private final Problem problem;
  private final Stock stock;
  private final SplittableRandom random;

  /** The best casting seen and its cost. */
  private Casting best;

  private long bestCost;

  Annealer(Problem problem, Casting start, Stock stock, long seed) {
    this.problem = problem;
    this.stock = stock;
    random = new SplittableRandom(seed);
    best = start;
    bestCost = new Ledger(problem, start.copy(), stock).cost();
  }

  Casting best() {
    return best;
  }

  long bestCost() {
    return bestCost;
  }

  /**
   * Anneals once from the best casting so far.
   *
   * @param heat 1 to start hot enough to forget it, less to stay near
   * @return the steps taken
   */
  long anneal(long steps, double heat, BooleanSupplier stop) {
    Ledger ledger = new Ledger(problem, best.copy(), stock);
    Moves moves = new Moves(problem, ledger, random);
    if (!moves.any()) {
      return 0;
    }
    long cost = ledger.cost();
    double hot = COLD + (HOT - COLD) * heat;
    double temperature = hot;
    for (long step = 0; step < steps; step++) {
      if (step % CLOCK_EVERY == 0) {
        if (stop.getAsBoolean()) {
          return step;
        }
        temperature = hot * Math.pow(COLD / hot, (double) step / steps);
      }
      if (!moves.propose()) {
        ledger.edits().clear();
        continue;
      }
      ledger.apply();
      long next = ledger.cost();
      if (next <= cost || random.nextDouble() < chance(next - cost, temperature)) {
        ledger.accept();
        cost = next;
        if (cost < bestCost) {
          bestCost = cost;
          best = ledger.layout.casting.copy();
        }
      } else {
        ledger.undo();
      }
    }
    return steps;
  }

  private static double chance(long worse, double temperature) {
    return Math.exp(-(double) worse / Weights.CHANGEOVER / temperature);
  }
}
