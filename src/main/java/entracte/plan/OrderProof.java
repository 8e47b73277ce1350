package entracte.plan;

import entracte.check.PermittedOrders;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Tries to prove for a small set that no permitted order has fewer moves than the best known. Every
 * order whose pairs alone do not cost that much is bounded by itself, the cheapest looking first,
 * and searched for a better plan while its bound leaves room for one. Where no start state is
 * given, an order costs what its reverse costs (a plan read backwards is a plan), so that one of
 * the two is enough.
 */
final class OrderProof {
  private static final int MOST_ORDERS = 60;
  private static final long NODES = 20_000;
  private static final long STEPS_PER_SONG = 15_000;
  private static final int ROUNDS = 3;

  private final Problem problem;
  private final PermittedOrders permitted;
  private final PairBounds pairs;
  private final Workers workers;
  private final BooleanSupplier stop;
  private final Stock stock;
  private final long seed;
  private final boolean eitherWay;
  private OrderTrial best;
  private final List<int[]> open = new ArrayList<>();
  private boolean tooMany;

  OrderProof(
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
    this.workers = workers;
    this.stop = stop;
    this.stock = stock;
    this.seed = seed;
    eitherWay =
        !permitted.anyForbidden()
            && problem.startCords.length == 0
            && !problem.start.midSet()
            && problem.start.state().positions().isEmpty();
  }

  /**
   * What came of it.
   *
   * @param best the best order known, perhaps a better one than before
   * @param lowerBound no permitted order has fewer moves
   */
  record Proved(OrderTrial best, int lowerBound) {}

  Proved prove(OrderTrial known) {
    best = known;
    int least = pairs.leastOrder(OrderSteps.of(permitted));
    if (least < enough()) {
      extend(new int[0], 0, 0, enough());
    }
    if (tooMany || least >= enough()) {
      return new Proved(best, Math.min(least, enough()));
    }
    open.sort(Comparator.comparingInt(pairs::of));
    int bound = Integer.MAX_VALUE;
    for (int[] order : open) {
      bound = Math.min(bound, boundOf(order));
    }
    return new Proved(best, Math.max(least, Math.min(bound, enough())));
  }

  /** The moves of the best order known: no better bound is needed. */
  private int enough() {
    return Weights.changeoverMoves(best.cost());
  }

  private int boundOf(int[] order) {
    int bound = pairs.of(order);
    Bounds bounds = new Bounds(problem.inOrder(order), workers, stop);
    for (int round = 0; round < ROUNDS && bound < enough() && !stop.getAsBoolean(); round++) {
      bounds.improve(round + 3, NODES << round, this::enough);
      bound = Math.max(bound, bounds.whole());
      if (bound < enough()) {
        look(order, STEPS_PER_SONG << round);
      }
    }
    return bound;
  }

  /** Looks for a plan of an order that may be better than the best. */
  private void look(int[] order, long stepsPerSong) {
    OrderTrial.Effort effort =
        new OrderTrial.Effort(problem, stock, seed, stepsPerSong * problem.songs(), 1, stop);
    OrderTrial trial = OrderTrial.of(effort, order, best.castingFor(order));
    best = trial.isBetterThan(best) ? trial : best;
  }

  /** Lists the orders that begin so and whose pairs cost less than enough. */
  private void extend(int[] start, int placed, int cost, int enough) {
    int count = start.length;
    if (count == problem.songs()) {
      if (open.size() < MOST_ORDERS) {
        open.add(start);
      } else {
        tooMany = true;
      }
      return;
    }
    OrderSteps steps = OrderSteps.of(permitted);
    for (int next = 0; next < problem.songs() && !tooMany; next++) {
      boolean fresh = (placed >> next & 1) == 0;
      int last = count == 0 ? next : start[count - 1];
      int all = cost + pairs.steps()[last][next];
      boolean mirrored = eitherWay && count > 0 && count == problem.songs() - 1 && next < start[0];
      if (fresh && all < enough && !mirrored && steps.mayFollow(placed, last, next)) {
        int[] longer = java.util.Arrays.copyOf(start, count + 1);
        longer[count] = next;
        extend(longer, placed | 1 << next, all, enough);
      }
    }
  }
}
