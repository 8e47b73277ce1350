package entracte.plan;

import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * What is done to the plan that a search has found, without more moves: modules and channels that
 * nothing tells apart are used from the lowest number on, and moves are put where there is time: in
 * that plan, or, if that is the aim, in any plan.
 */
final class LastTouch {
  private final Problem problem;
  private final Options options;
  private final BooleanSupplier stop;

  LastTouch(Problem problem, Options options, BooleanSupplier stop) {
    this.problem = problem;
    this.options = options;
    this.stop = stop;
  }

  Plan of(Plan plan, Casting casting) {
    Casting renamed = new LowestFirst(problem).of(casting);
    Optional<Plan> other =
        stop.getAsBoolean()
            ? Optional.empty()
            : new Finish(problem).plan(renamed).filter(it -> !options.prefers(plan, it));
    return other.isPresent() ? suitGaps(other.get(), renamed) : suitGaps(plan, casting);
  }

  private Plan suitGaps(Plan plan, Casting casting) {
    if (options.clock().isEmpty()) {
      return plan;
    }
    Evening evening = new Evening(problem, options.clock().get(), stop);
    return switch (options.aim()) {
      case FEWEST -> evening.inclined(plan, casting);
      case FASTEST -> plan;
      case EVEN -> evening.pressed(plan, casting, options.seed());
    };
  }
}
