package entracte.plan;

import entracte.check.PlayableSet;
import java.util.Optional;

/**
 * Plans a set from the plan of one that is much the same, without bounds and in one thread: once
 * close to what is known, once from afar. Fit for many sets at once.
 */
final class ShortSearch {
  private static final long STEPS_PER_SONG = 12_000;
  private static final long TIGHT_STEPS_PER_SONG = 3_000;
  private static final double CLOSE = 0.25;
  private static final double FAR = 1;

  private final Options options;

  ShortSearch(Options options) {
    this.options = options;
  }

  /** A plan; empty if none was found. */
  Optional<Plan> find(PlayableSet set, Plan near) {
    Problem problem = new Problem(set, options.start());
    if (!(new FirstCasting(problem).find() instanceof FirstCasting.Found.Cast cast)) {
      return Optional.empty();
    }
    Casting known = new KnownCasting(problem).from(near, cast.casting());
    Optional<Plan> loose = find(problem, known, Stock.LOOSE);
    return loose.isPresent() ? loose : find(problem, known, Stock.TIGHT);
  }

  private Optional<Plan> find(Problem problem, Casting known, Stock stock) {
    long perSong = stock == Stock.LOOSE ? STEPS_PER_SONG : TIGHT_STEPS_PER_SONG;
    Finish finish = new Finish(problem);
    Optional<Plan> best = Optional.empty();
    for (double heat : new double[] {CLOSE, FAR}) {
      Annealer annealer = new Annealer(problem, known, stock, options.seed());
      annealer.anneal(perSong * problem.songs(), heat, options.cancelled());
      Optional<Plan> plan =
          stock == Stock.LOOSE ? finish.loosePlan(annealer.best()) : finish.plan(annealer.best());
      if (plan.isPresent() && (best.isEmpty() || plan.get().moves() < best.get().moves())) {
        best = plan;
      }
    }
    return best;
  }
}
