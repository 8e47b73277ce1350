package entracte.plan;

import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** The silence that a set allows before each song, and how far a plan overruns it. */
final class Gaps {
  private final OptionalDouble[] gaps;
  private final Clock clock;

  /** The times of the plans asked about so far: to take them costs more than to look for some. */
  private final Map<Plan, double[]> taken = new IdentityHashMap<>();

  Gaps(Problem problem, Clock clock) {
    this.clock = clock;
    gaps =
        problem.set.parts().stream()
            .map(part -> part.song().gapSeconds())
            .toArray(OptionalDouble[]::new);
    if (!problem.start.midSet()) {
      gaps[0] = OptionalDouble.empty();
    }
  }

  /** Whether there is anything to overrun. */
  boolean any() {
    return Arrays.stream(gaps).anyMatch(OptionalDouble::isPresent);
  }

  /** The seconds by which each changeover is longer than its gap; 0 without a gap. */
  double[] overruns(Plan plan) {
    double[] seconds = seconds(plan);
    double[] over = new double[gaps.length];
    Arrays.setAll(
        over, k -> gaps[k].isPresent() ? Math.max(0, seconds[k] - gaps[k].getAsDouble()) : 0);
    return over;
  }

  /** How full each gap is: 1 if it just suffices; 0 without a gap. */
  double[] fill(Plan plan) {
    double[] seconds = seconds(plan);
    double[] fill = new double[gaps.length];
    Arrays.setAll(
        fill, k -> gaps[k].isPresent() ? seconds[k] / Math.max(1, gaps[k].getAsDouble()) : 0);
    return fill;
  }

  private double[] seconds(Plan plan) {
    return taken.computeIfAbsent(plan, clock::seconds);
  }
}
