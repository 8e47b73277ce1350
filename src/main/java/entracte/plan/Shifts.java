package entracte.plan;

import java.util.Arrays;

/**
 * Pairs what goes with what comes, as many as can be: maximum bipartite matching by augmenting
 * paths (Kuhn 1955).
 */
final class Shifts {
  /** Whether cord {@code going} can become cord {@code coming} with one plug left in its jack. */
  @FunctionalInterface
  interface May {
    boolean shift(int going, int coming);
  }

  private final May may;
  private final int[] comingOf;
  private final int[] goingOf;

  private Shifts(int going, int coming, May may) {
    this.may = may;
    comingOf = new int[going];
    goingOf = new int[coming];
    Arrays.fill(comingOf, -1);
    Arrays.fill(goingOf, -1);
  }

  /** For each that goes the one it becomes, or -1. */
  static int[] most(int going, int coming, May may) {
    Shifts shifts = new Shifts(going, coming, may);
    for (int g = 0; g < going; g++) {
      shifts.augment(g, new boolean[coming]);
    }
    return shifts.comingOf;
  }

  private boolean augment(int going, boolean[] tried) {
    for (int c = 0; c < goingOf.length; c++) {
      if (!tried[c] && may.shift(going, c)) {
        tried[c] = true;
        if (goingOf[c] < 0 || augment(goingOf[c], tried)) {
          goingOf[c] = going;
          comingOf[going] = c;
          return true;
        }
      }
    }
    return false;
  }
}
