package entracte.cue;

import java.util.Comparator;

/**
 * From left to right across the case, and within the reach of a hand from the top row down. A step
 * stands where its first plug or its control is.
 */
final class HandOrder {
  /** What a hand covers without moving the arm: three modules of the usual width. */
  static final double REACH_CM = 18;

  static final Comparator<Spot> SPOTS =
      Comparator.comparingLong((Spot spot) -> (long) Math.floor(spot.centreCm() / REACH_CM))
          .thenComparingInt(Spot::row)
          .thenComparingDouble(Spot::centreCm)
          .thenComparingInt(Spot::part);

  private HandOrder() {}
}
