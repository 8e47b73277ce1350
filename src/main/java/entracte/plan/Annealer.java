package entracte.plan;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleSupplier;

/**
 * Improves a casting by simulated annealing (Kirkpatrick, Gelatt and Vecchi 1983): a change that
 * costs d more is accepted with probability exp(-d/T), while T falls geometrically. It promises
 * nothing, but every cost it sees is exact. The same seed and number of steps give the same
 * casting.
 */
final class Annealer {
  private static final double HOT = 2.5;
  private static final double COLD = 0.18;

  /** What a cord that no longer stays costs at least, mostly, in typical moves. */
  private static final double FOR_A_CORD = 1.3;

  private static final int CLOCK_EVERY = 256;
  private static final int RESHAPE_EVERY = 300;

  private final Problem problem;
  private final Stock stock;
  private final SplittableRandom random;

  /** The best casting seen and its cost. */
  private Casting best;

  private long bestCost;
  private final Reshaping reshaping;

  /** The weight of a typical move. */
  private final double unit;

  private Optional<Sightings> sightings = Optional.empty();
  private DoubleSupplier timeGone = () -> 0;
  private Ledger ledger;
  private Moves moves;
  private QuickLook quickLook;
  private long cost;
  private long taken;

  Annealer(Problem problem, Casting start, Stock stock, long seed) {
    this.problem = problem;
    this.stock = stock;
    random = new SplittableRandom(seed);
    reshaping = new Reshaping(problem);
    unit = Weights.CHANGEOVER * problem.prices.typical;
    best = start;
    bestCost = new Ledger(problem, start.copy(), stock).cost();
  }

  /** Has every casting reported that is accepted from now on. */
  void report(Sightings to) {
    sightings = Optional.of(to);
  }

  /** Cools down with the time that there is, from 0 to 1, where that goes faster than the steps. */
  void keepTo(DoubleSupplier time) {
    timeGone = time;
  }

  Casting best() {
    return best;
  }

  long bestCost() {
    return bestCost;
  }

  /** How many steps it has taken so far. */
  long steps() {
    return taken;
  }

  /**
   * Anneals once from the best casting so far.
   *
   * @param heat 1 to start hot enough to forget it, less to stay near
   */
  void anneal(long steps, double heat, BooleanSupplier stop) {
    take(best.copy());
    boolean reshapes = reshaping.any();
    if (!moves.any() && !reshapes) {
      return;
    }
    double hot = COLD + (HOT - COLD) * heat;
    double temperature = hot;
    for (long step = 0; step < steps; step++, taken++) {
      if (step % CLOCK_EVERY == 0) {
        if (stop.getAsBoolean()) {
          return;
        }
        double gone = Math.max((double) step / steps, timeGone.getAsDouble());
        temperature = hot * Math.pow(COLD / hot, Math.min(1, gone));
      }
      if (reshapes && step % RESHAPE_EVERY == 0) {
        reshape(temperature);
      } else {
        move(temperature);
      }
    }
  }

  private void take(Casting casting) {
    ledger = new Ledger(problem, casting, stock);
    moves = new Moves(problem, ledger, random);
    quickLook = new QuickLook(ledger);
    cost = ledger.cost();
    keepBest();
  }

  private void move(double temperature) {
    if (!moves.propose()) {
      ledger.edits().clear();
      return;
    }
    long limit = limit(temperature);
    if (isHopeless(limit)) {
      ledger.edits().clear();
      return;
    }
    ledger.apply();
    if (ledger.cost() > limit) {
      ledger.undo();
      return;
    }
    ledger.accept();
    cost = ledger.cost();
    keepBest();
    if (sightings.isPresent()) {
      sightings.get().see(cost, ledger.layout.casting);
    }
  }

  /** What a change may cost to be accepted: the same as asking for exp(-d/T) with each. */
  private long limit(double temperature) {
    return cost + (long) (-Math.log(1 - random.nextDouble()) * unit * temperature);
  }

  /** Whether the cords that go would cost too much, unless much else is gained. */
  private boolean isHopeless(long limit) {
    return ledger.layout.faults() == 0
        && quickLook.lost(moves.from(), moves.to()) * unit * FOR_A_CORD > limit - cost;
  }

  private void reshape(double temperature) {
    Optional<Casting> other = reshaping.propose(ledger.layout.casting, random);
    if (other.isPresent()) {
      long next = new Ledger(problem, other.get(), stock).cost();
      if (next <= limit(temperature)) {
        take(other.get());
      }
    }
  }

  private void keepBest() {
    if (cost < bestCost) {
      bestCost = cost;
      best = ledger.layout.casting.copy();
    }
  }
}
