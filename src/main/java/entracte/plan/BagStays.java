package entracte.plan;

import java.util.Arrays;

/** What {@link BagRule} did with every cord, stay by stay, in arrays that are used again. */
final class BagStays {
  private final CordLedger cords;
  private final int[] lastUse;
  private final int[] length;
  private final int[] from;
  private final int[] to;
  private final int[] cameFrom;
  private final boolean[] unused;
  private final boolean[] forgotten;

  /** The stay that serves each use. */
  private final int[] stayOf;

  private int count;

  BagStays(CordLedger cords) {
    this.cords = cords;
    int most = 2 * cords.columnOf.length + 1;
    lastUse = new int[most];
    length = new int[most];
    from = new int[most];
    to = new int[most];
    cameFrom = new int[most];
    unused = new boolean[most];
    forgotten = new boolean[most];
    stayOf = new int[cords.columnOf.length];
  }

  void clear() {
    count = 0;
    Arrays.fill(stayOf, BagRule.NONE);
  }

  int open(int use, int column, int lengthIndex, int shiftedFrom) {
    int stay = openEarly(use, column, lengthIndex);
    unused[stay] = false;
    cameFrom[stay] = shiftedFrom;
    stayOf[use] = stay;
    return stay;
  }

  /** Opens a stay that waits for its first use. */
  int openEarly(int use, int column, int lengthIndex) {
    lastUse[count] = use;
    length[count] = lengthIndex;
    from[count] = column;
    to[count] = cords.columns - 1;
    cameFrom[count] = BagRule.NONE;
    unused[count] = true;
    forgotten[count] = false;
    return count++;
  }

  void serve(int stay, int use) {
    lastUse[stay] = use;
    unused[stay] = false;
    stayOf[use] = stay;
  }

  void close(int stay, int column) {
    to[stay] = column;
  }

  void forget(int stay) {
    forgotten[stay] = true;
  }

  int lastUse(int stay) {
    return lastUse[stay];
  }

  int length(int stay) {
    return length[stay];
  }

  boolean isUnused(int stay) {
    return unused[stay];
  }

  int count() {
    return count;
  }

  /** Whether the stay lasted to a use; one put in early and never used is as if it never was. */
  boolean counts(int stay) {
    return !forgotten[stay] && !unused[stay];
  }

  int from(int stay) {
    return from[stay];
  }

  int to(int stay) {
    return to[stay];
  }

  int cameFrom(int stay) {
    return cameFrom[stay];
  }

  int stayOf(int use) {
    return stayOf[use];
  }
}
