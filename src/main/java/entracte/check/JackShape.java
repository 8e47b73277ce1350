package entracte.check;

import entracte.rig.Direction;

/**
 * How a kind reads the name of a jack.
 *
 * @param number which of the equal jacks, if the name says; else 0
 * @param equal whether the kind has several equal jacks of that name
 */
record JackShape(String jack, int number, boolean equal, Direction direction) {
  /** Whether two kinds mean the same: one may have a single jack where the other has several. */
  boolean agrees(JackShape other) {
    return jack.equals(other.jack) && number == other.number;
  }
}
