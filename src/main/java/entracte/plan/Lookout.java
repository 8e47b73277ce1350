package entracte.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.ToLongFunction;

/**
 * Looks for a better plan where the bag is short of cords, or an idle multiple would have two
 * feeds. A casting may then cost more than it seems to, and one that seems as dear may make the
 * better plan. So this notes the castings that an annealing comes by, and finishes them with the
 * cords that there are: the one that seemed best, then those that the flow of cords speaks best of.
 */
final class Lookout {
  private static final int HOPES = 12;
  private static final int FLOWS = 20;

  private final Problem problem;
  private final Annealer annealer;
  private final BooleanSupplier stop;
  private final Sightings seen;
  private final ToLongFunction<Plan> weigh;

  /** What a plan must weigh less than. */
  private long below;

  private Optional<Found> best = Optional.empty();

  /** A casting and the plan that it makes. */
  record Found(Casting casting, Plan plan) {}

  private record Hope(long bound, Casting casting) {}

  /**
   * Looks out from an annealing that is yet to be done.
   *
   * @param weigh what a plan weighs, in the prices of the problem
   * @param below what a plan must weigh less than
   */
  Lookout(
      Problem problem,
      Annealer annealer,
      ToLongFunction<Plan> weigh,
      long below,
      BooleanSupplier stop) {
    this.problem = problem;
    this.annealer = annealer;
    this.weigh = weigh;
    this.below = below;
    this.stop = stop;
    seen = new Sightings(below);
    annealer.report(seen);
  }

  Annealer annealer() {
    return annealer;
  }

  /** The best plan found; empty if none is good enough. */
  Optional<Found> found() {
    Finish finish = new Finish(problem, FLOWS);
    take(finish, annealer.best());
    for (Hope hope : hopes()) {
      if (hope.bound() >= below || stop.getAsBoolean()) {
        break;
      }
      take(finish, hope.casting());
    }
    return best;
  }

  private void take(Finish finish, Casting casting) {
    Optional<Plan> plan = finish.plan(casting, below);
    if (plan.isPresent() && weigh.applyAsLong(plan.get()) < below) {
      below = weigh.applyAsLong(plan.get());
      best = Optional.of(new Found(casting, plan.get()));
    }
  }

  private List<Hope> hopes() {
    List<Hope> hopes = new ArrayList<>();
    for (Sightings.Sighting sighting : seen.cheapest()) {
      if (stop.getAsBoolean()) {
        break;
      }
      Layout layout = new Layout(problem, sighting.casting().copy());
      if (!Finish.mayFlow(layout)) {
        break;
      }
      long bound = layout.controlsCost() + new Truth(layout).pluggingBound();
      hopes.add(new Hope(bound, sighting.casting()));
    }
    hopes.sort(Comparator.comparingLong(Hope::bound));
    return hopes.subList(0, Math.min(HOPES, hopes.size()));
  }
}
