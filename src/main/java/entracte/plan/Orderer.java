package entracte.plan;

import entracte.check.PermittedOrders;
import entracte.check.PlayableSet;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Proposes an order of the songs with fewer moves, under the set's rules. The order as written is
 * planned first; then orders are searched, the way that suits the set, and bounded; the best one is
 * planned like the first. The front door to orders, as {@link Planner} is to plans.
 */
public final class Orderer {
  /** How many times the usual steps to take where the musician gives the time. */
  private static final int LONGER = 4;

  private static final int FITTING_ROUNDS = 2;
  private static final long PAIR_NODES = 20_000;
  private static final long NODES_FOR_ALL_PAIRS = 3_000_000;

  /** What part of the time each stage may have used up at its end. */
  private static final double WRITTEN_DONE = 0.25;

  private static final double SEARCH_DONE = 0.65;
  private static final double PROOF_DONE = 0.8;

  private final PlayableSet set;
  private final Options options;
  private final long begun = System.nanoTime();
  private final Problem problem;
  private final PermittedOrders permitted;
  private final int[] written;

  private Orderer(PlayableSet set, Options options) {
    this.set = set;
    this.options =
        options.withAim(Aim.FEWEST).withProgress(p -> options.progress().accept(p.at(elapsed())));
    problem = new Problem(set, options.start());
    permitted = set.permittedOrders();
    written = IntStream.range(0, set.parts().size()).toArray();
  }

  /** Orders {@code set}; the plans found have passed the {@link Verifier}. */
  public static Ordered order(PlayableSet set, Options options) {
    return new Orderer(set, options).order();
  }

  private Ordered order() {
    FirstCasting.Found cast = new FirstCasting(problem).find();
    Result first = Planner.plan(set, options.withTime(seconds(WRITTEN_DONE)));
    Optional<int[]> start =
        permitted.permits(written) ? Optional.of(written) : set.somePermittedOrder();
    if (first instanceof Result.Impossible none) {
      return new Ordered.NoneFound(none.reason());
    }
    if (start.isEmpty()) {
      return new Ordered.NoneFound("No order was found that the set's rules permit.");
    }
    Optional<Result.Planned> planned =
        first instanceof Result.Planned p ? Optional.of(p) : Optional.empty();
    Casting casting = ((FirstCasting.Found.Cast) cast).casting();
    try (Workers workers = new Workers()) {
      Optional<ToolSwitches> tools = ToolSets.of(problem, casting);
      return tools.isPresent()
          ? byTools(tools.get(), start.get(), casting, planned, workers)
          : bySearch(start.get(), casting, planned, workers);
    }
  }

  private Ordered byTools(
      ToolSwitches tools,
      int[] start,
      Casting casting,
      Optional<Result.Planned> planned,
      Workers workers) {
    ToolOrder.Found found =
        new ToolOrder(tools, permitted, workers, until(SEARCH_DONE))
            .find(start, options.seed(), options.rounds() == Options.NO_LIMIT ? LONGER : 1);
    OrderTrial trial = new OrderTrial(found.order(), casting.inOrder(found.order()), 0);
    int bound = ToolSets.MOVES_PER_SWITCH * found.switchesAtLeast();
    return finish(planned, trial, bound);
  }

  private Ordered bySearch(
      int[] start, Casting casting, Optional<Result.Planned> planned, Workers workers) {
    int songs = problem.songs();
    long pairCount = Math.max(1, (long) songs * (songs - 1) / 2);
    long nodes = Math.min(PAIR_NODES, Math.max(100, NODES_FOR_ALL_PAIRS / pairCount));
    BooleanSupplier stop = until(SEARCH_DONE);
    PairBounds pairs = PairBounds.of(problem, nodes, workers, stop);
    Stock stock = new Finish(problem).loosePlan(casting).isPresent() ? Stock.LOOSE : Stock.TIGHT;
    OrderSearch search =
        new OrderSearch(problem, permitted, pairs, stock, workers, stop, options.seed());
    OrderTrial first = trial(start, casting, stock, stop);
    OrderTrial best = search.find(first, rounds());
    if (songs > PathOrders.MOST_SONGS) {
      return finish(planned, best, pairs.leastOrder(OrderSteps.FREE));
    }
    OrderProof.Proved proved =
        new OrderProof(problem, permitted, pairs, stock, workers, until(PROOF_DONE), options.seed())
            .prove(best);
    return finish(planned, proved.best(), proved.lowerBound());
  }

  private int rounds() {
    return options.rounds() == Options.FITTING_ROUNDS ? FITTING_ROUNDS : options.rounds();
  }

  private OrderTrial trial(int[] start, Casting casting, Stock stock, BooleanSupplier stop) {
    OrderTrial.Effort none = new OrderTrial.Effort(problem, stock, options.seed(), 0, 1, stop);
    return OrderTrial.of(none, start, casting.inOrder(start));
  }

  /** Plans the order found as thoroughly as the one written, from what the search found. */
  private Ordered finish(Optional<Result.Planned> planned, OrderTrial best, int bound) {
    if (planned.isPresent() && Arrays.equals(best.order(), written)) {
      return found(planned, planned.get(), written, bound);
    }
    Options last = options.withTime(seconds(1));
    Optional<Plan> near = best.plan(problem);
    Result again = Planner.plan(set.inOrder(best.order()), near.map(last::withNear).orElse(last));
    if (!(again instanceof Result.Planned proposed)) {
      return new Ordered.NoneFound("No order was found that the cords in stock can serve.");
    }
    boolean writtenIsBest =
        permitted.permits(written)
            && planned.filter(p -> p.plan().moves() <= proposed.plan().moves()).isPresent();
    return writtenIsBest
        ? found(planned, planned.get(), written, bound)
        : found(planned, proposed, best.order(), bound);
  }

  private Ordered found(
      Optional<Result.Planned> planned, Result.Planned proposed, int[] order, int bound) {
    return new Ordered.Found(
        planned,
        permitted.permits(written),
        proposed,
        Arrays.stream(order).boxed().toList(),
        Math.min(bound, proposed.plan().moves()));
  }

  private BooleanSupplier until(double part) {
    return () -> options.cancelled().getAsBoolean() || elapsed() > part * options.seconds();
  }

  /** The seconds until a part of the time is over. */
  private double seconds(double part) {
    return Math.max(0.05, part * options.seconds() - elapsed());
  }

  private double elapsed() {
    return (System.nanoTime() - begun) / 1e9;
  }
}
