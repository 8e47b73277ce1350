package entracte.setlist;

import java.util.OptionalDouble;

/**
 * The time on stage that a set is given.
 *
 * @param seconds from the first note to the last; empty if nobody counts
 * @param reserveSeconds what of it shall stay unused, for whatever happens
 */
public record Slot(OptionalDouble seconds, double reserveSeconds) {
  public Slot {
    if (!(reserveSeconds >= 0)) {
      throw new IllegalArgumentException("a reserve below nothing: " + reserveSeconds);
    }
  }

  /** As long as it takes. */
  public static Slot open() {
    return new Slot(OptionalDouble.empty(), 0);
  }
}
