package entracte.plan;

/**
 * What a casting costs by all the rules of the set, where {@link Ledger} takes the bag to be
 * endless. Lengths are left out, so the cost is a lower bound where they matter.
 */
final class Truth {
  private static final int FLOW_NODES = 50;

  private final Problem problem;
  private final CordLedger cords;
  private final Layout layout;

  Truth(Layout layout) {
    this.layout = layout;
    problem = layout.problem;
    cords = layout.cords;
  }

  /** Whether the bag could run empty with this casting, whatever the times. */
  boolean bagMayRunEmpty() {
    int[] change = new int[cords.columns + 1];
    for (int use = 0; use < cords.columnOf.length; use++) {
      if (cords.sourceOf[use] != CordLedger.NOTHING) {
        int from = cords.addFrom[use] != 0 ? cords.addFrom[use] : cords.columnOf[use];
        change[from]++;
        change[lastColumn(use) + 1]--;
      }
    }
    int stock = problem.rig.rig.cords().total();
    int plugged = 0;
    for (int column = 0; column < cords.columns; column++) {
      plugged += change[column];
      if (plugged > stock) {
        return true;
      }
    }
    return false;
  }

  /** The last column in which the cord of a use may still be there, up to its next use. */
  private int lastColumn(int use) {
    if (cords.removeTo[use] != 0) {
      return cords.removeTo[use] - 1;
    }
    return cords.isKept(use)
        ? cords.columnOf[cords.nextUse(cords.sourceOf[use], cords.columnOf[use])] - 1
        : cords.columns - 1;
  }

  /** The least weight of the plugging with this bag, or something below it. */
  long pluggingBound() {
    BagPlaces places = new BagPlaces(cords, problem.rig);
    return new BagFlow(problem, cords, places).cost();
  }

  /** The least weight of the plugging with this bag; below it only if the search was cut short. */
  long plugging() {
    return new BagProof(problem, layout, FLOW_NODES, FLOW_NODES, Long.MAX_VALUE).lowerBound();
  }
}
