package entracte.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.ToLongFunction;

/**
 * Looks for a better plan where the bag is short of cords, or an idle multiple would have two
 * feeds. A casting may then cost more than it seems to, and one that seems as dear may make the
 * better plan. So this notes the castings that an annealing comes by, and finishes them with the
 * cords that there are: the one that seemed best, then those that the flow of cords speaks best of.
 */
final class Lookout {
  private static final int HOPES = 40;
  private static final int FLOWS = 20;

  /** How many castings are looked at: in a small set, where that takes no time, very many. */
  private static final int SIGHTINGS = 80;

  private static final int SIGHTINGS_IN_A_SMALL_SET = 2000;

  private final Problem problem;
  private final Annealer annealer;
  private final BooleanSupplier stop;
  private final Sightings seen;
  private final boolean lengthMatters;
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
    boolean small = Search.isSmall(problem);
    seen = new Sightings(small ? SIGHTINGS_IN_A_SMALL_SET : SIGHTINGS, below);
    lengthMatters = problem.rig.rig.cords().lengthMatters();
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

  /** Those that differ in the names of what nothing tells apart are one. */
  private List<Hope> hopes() {
    List<Hope> hopes = new ArrayList<>();
    LowestFirst names = new LowestFirst(problem);
    Set<List<Integer>> known = new HashSet<>();
    for (Sightings.Sighting sighting : seen.cheapest()) {
      if (stop.getAsBoolean()) {
        break;
      }
      if (!lengthMatters && !known.add(Sightings.key(names.of(sighting.casting())))) {
        continue;
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
