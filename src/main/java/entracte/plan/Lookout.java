package entracte.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.function.ToLongFunction;

/**
 * Looks for a better plan where the bag is short of cords, or an idle multiple would have two
 * feeds. A casting may then cost more than it seems to, and one that seems as dear may make the
 * better plan. So this anneals with an endless bag, notes the castings that it comes by, and
 * finishes them with the cords that there are: those first that the flow of cords speaks best of.
 */
final class Lookout implements Callable<Optional<Lookout.Found>> {
  private static final int HOPES = 12;
  private static final int FLOWS = 20;

  private final Problem problem;
  private final Annealer annealer;
  private final double heat;
  private final long steps;
  private final BooleanSupplier stop;
  private final Sightings seen;
  private final ToLongFunction<Plan> weigh;

  /** What a plan must weigh less than. */
  private long below;

  /** A casting and the plan that it makes. */
  record Found(Casting casting, Plan plan) {}

  private record Hope(long bound, Casting casting) {}

  /**
   * A search from a known casting.
   *
   * @param weigh what a plan weighs, in the prices of the problem
   * @param below what a plan must weigh less than
   * @param heat 1 to forget the casting, less to stay near
   */
  Lookout(
      Problem problem,
      Casting from,
      ToLongFunction<Plan> weigh,
      long below,
      long seed,
      double heat,
      long steps,
      BooleanSupplier stop) {
    this.problem = problem;
    this.weigh = weigh;
    this.below = below;
    this.heat = heat;
    this.steps = steps;
    this.stop = stop;
    annealer = new Annealer(problem, from, Stock.LOOSE, seed);
    seen = new Sightings(below);
  }

  /** The best plan found; empty if none is good enough. */
  @Override
  public Optional<Found> call() {
    annealer.report(seen);
    annealer.anneal(steps, heat, stop);
    Finish finish = new Finish(problem, FLOWS);
    Optional<Found> best = Optional.empty();
    for (Hope hope : hopes()) {
      if (hope.bound() >= below || stop.getAsBoolean()) {
        break;
      }
      Optional<Plan> plan = finish.plan(hope.casting(), below);
      if (plan.isPresent() && weigh.applyAsLong(plan.get()) < below) {
        below = weigh.applyAsLong(plan.get());
        best = Optional.of(new Found(hope.casting(), plan.get()));
      }
    }
    return best;
  }

  private List<Hope> hopes() {
    List<Hope> hopes = new ArrayList<>();
    for (Sightings.Sighting sighting : seen.cheapest()) {
      if (stop.getAsBoolean()) {
        break;
      }
      Layout layout = new Layout(problem, sighting.casting().copy());
      long bound = layout.controlsCost() + new Truth(layout).pluggingBound();
      hopes.add(new Hope(bound, sighting.casting()));
    }
    hopes.sort(Comparator.comparingLong(Hope::bound));
    return hopes.subList(0, Math.min(HOPES, hopes.size()));
  }
}
