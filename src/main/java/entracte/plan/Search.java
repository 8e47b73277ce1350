package entracte.plan;

import java.util.Optional;

/** One run of the planner: anneals castings, finishes the best, and says what is known of it. */
final class Search {
  private static final long STEPS_PER_SONG = 40_000;

  private final Problem problem;
  private final Casting first;
  private final Options options;
  private final long begun;

  Search(Problem problem, Casting first, Options options, long begun) {
    this.problem = problem;
    this.first = first;
    this.options = options;
    this.begun = begun;
  }

  Result run() {
    Finish finish = new Finish(problem);
    Casting loose = anneal(first, Stock.LOOSE);
    Ledger ledger = new Ledger(problem, loose.copy(), Stock.LOOSE);
    Optional<Plan> plan = ledger.layout.faults() == 0 ? finish.loosePlan(ledger) : Optional.empty();
    if (plan.isEmpty()) {
      plan = finish.plan(anneal(loose, Stock.TIGHT));
    }
    if (plan.isEmpty()) {
      return new Result.Impossible("No casting was found that the cords in stock can serve.");
    }
    return new Result.Planned(plan.get(), 0, 0, Result.Stopped.STEPS, seconds());
  }

  private Casting anneal(Casting from, Stock stock) {
    Annealer annealer = new Annealer(problem, from, stock, options.seed());
    annealer.anneal(STEPS_PER_SONG * problem.songs(), 1, this::timeIsUp);
    return annealer.best();
  }

  private boolean timeIsUp() {
    return seconds() > options.seconds() || options.cancelled().getAsBoolean();
  }

  private double seconds() {
    return (System.nanoTime() - begun) / 1e9;
  }
}
