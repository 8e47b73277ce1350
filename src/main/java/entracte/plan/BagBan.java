package entracte.plan;

/**
 * What a cord may not do in {@link BagFlow}: be in a place in a column, or go from there to a place
 * in the next column, which may be the same.
 *
 * @param next the place, or {@link BagRule#NONE} for what it may not be in at all
 */
record BagBan(int place, int column, int next) {
  static BagBan from(int place, int column) {
    return new BagBan(place, column, BagRule.NONE);
  }
}
