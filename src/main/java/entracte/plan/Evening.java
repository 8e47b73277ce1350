package entracte.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Shifts moves from changeovers that have no time for them to those that have. Cords and knobs of
 * modules that rest may be seen to early, so that the same casting leaves a choice; and of castings
 * that cost hardly more some ask less of a short gap.
 *
 * <p>A plan is searched for again and again with weights that spare the changeovers overrun so far,
 * more each time, and the one that overruns least is kept: of equal ones that with the fewest
 * moves, then with the fewest in the set-up. That it overruns least is not proven, unless it does
 * not at all.
 */
final class Evening {
  private static final int TRIES = 6;
  private static final long STEPS_PER_SONG = 6_000;
  private static final double GENTLE = 0.3;
  private static final double PRESS = 1.5;
  private static final double MOST = 64;
  private static final int INCLINATIONS = 15;

  /** Overruns that differ by less than a hearer could tell, in seconds. */
  private static final double SAME = 0.05;

  private final Problem problem;
  private final Gaps gaps;
  private final BooleanSupplier stop;

  Evening(Problem problem, Clock clock, BooleanSupplier stop) {
    this.problem = problem;
    this.stop = stop;
    gaps = new Gaps(problem, clock);
  }

  double overrun(Plan plan) {
    return Arrays.stream(gaps.overruns(plan)).sum();
  }

  /** The same casting with as many moves, at times that suit the gaps better if there are any. */
  Plan inclined(Plan plan, Casting casting) {
    if (!gaps.any() || overrun(plan) < SAME) {
      return plan;
    }
    double[] fill = gaps.fill(plan);
    int[] dearer = new int[problem.columns()];
    for (int song = 0; song < fill.length; song++) {
      dearer[song + 1] = (int) Math.min(INCLINATIONS, Math.round(INCLINATIONS * fill[song] / 2));
    }
    Problem leaning = problem.weighing(problem.weights.inclined(dearer));
    return new Finish(leaning)
        .loosePlan(casting)
        .filter(other -> other.moves() == plan.moves() && other.setUpMoves() == plan.setUpMoves())
        .filter(other -> overrun(other) + SAME < overrun(plan))
        .orElse(plan);
  }

  /** The plan that overruns least of those found around a good one. */
  Plan pressed(Plan plan, Casting casting, long seed) {
    Plan best = plan;
    Casting near = casting;
    double[] factors = new double[problem.columns()];
    Arrays.fill(factors, 1);
    for (int go = 0; go < TRIES && overrun(best) >= SAME && !stop.getAsBoolean(); go++) {
      press(factors, gaps.overruns(best));
      Problem pressing = problem.weighing(problem.weights.pressed(factors));
      Annealer annealer = new Annealer(pressing, near, Stock.LOOSE, seed + go);
      annealer.anneal(STEPS_PER_SONG * problem.songs(), go % 2 == 0 ? GENTLE : 1, stop);
      for (Casting candidate : List.of(annealer.best(), near)) {
        Optional<Plan> found = new Finish(pressing).plan(candidate);
        if (found.isPresent() && isBetter(found.get(), best)) {
          best = found.get();
          near = candidate;
        }
      }
    }
    return best;
  }

  private static void press(double[] factors, double[] overruns) {
    for (int song = 0; song < overruns.length; song++) {
      double factor = factors[song + 1] * (overruns[song] > 0 ? PRESS + overruns[song] / 20 : 1);
      factors[song + 1] = Math.min(MOST, factor);
    }
  }

  /** Whether a plan is better by the aim {@link Aim#EVEN}. */
  boolean isBetter(Plan plan, Plan other) {
    double saved = overrun(other) - overrun(plan);
    if (Math.abs(saved) >= SAME) {
      return saved > 0;
    }
    return Weights.of(plan) < Weights.of(other);
  }
}
