package entracte.rig;

import java.util.OptionalDouble;

/**
 * How an instrument drifts with its warmth, as its owner knows it; each empty if it does not
 * matter.
 *
 * @param warmUpSeconds from power on until tuning makes sense
 * @param tuneAgainSeconds how long a tuning holds
 */
public record Warmth(OptionalDouble warmUpSeconds, OptionalDouble tuneAgainSeconds) {
  /** Of which nothing is said. */
  public static Warmth unsaid() {
    return new Warmth(OptionalDouble.empty(), OptionalDouble.empty());
  }
}
