package entracte.plan;

import java.util.List;

/**
 * A cord that stays in its two jacks over several columns.
 *
 * @param from the first column it is plugged in
 * @param to the last
 * @param uses the uses it serves, in order; at least one
 */
record Stay(int from, int to, List<Integer> uses) {
  Stay {
    uses = List.copyOf(uses);
  }

  /** The use whose direction the cord has in a column: the last so far, or the first to come. */
  int useIn(int column, CordLedger cords) {
    int found = uses.get(0);
    for (int use : uses) {
      if (cords.columnOf[use] <= column) {
        found = use;
      }
    }
    return found;
  }
}
