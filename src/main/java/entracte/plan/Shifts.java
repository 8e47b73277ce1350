package entracte.plan;

import java.util.Arrays;

/**
 * Pairs what goes with what comes: as many as can be, by augmenting paths (Kuhn 1955), or so that
 * they save most, as a flow.
 */
final class Shifts {
  /** Whether cord {@code going} can become cord {@code coming} with one plug left in its jack. */
  @FunctionalInterface
  interface May {
    boolean shift(int going, int coming);
  }

  /** What is saved if cord {@code going} becomes cord {@code coming}; 0 if it cannot. */
  @FunctionalInterface
  interface Saving {
    int of(int going, int coming);
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

  /** For each that goes the one it becomes, or -1, so that all together save most. */
  static int[] dearest(int going, int coming, Saving saving) {
    int sink = 1 + going + coming;
    MinCostFlow flow = new MinCostFlow(sink + 1);
    int[][] arc = new int[going][coming];
    for (int g = 0; g < going; g++) {
      flow.arc(0, 1 + g, 1, 0);
      for (int c = 0; c < coming; c++) {
        arc[g][c] = flow.arc(1 + g, 1 + going + c, 1, -saving.of(g, c));
      }
    }
    for (int c = 0; c < coming; c++) {
      flow.arc(1 + going + c, sink, 1, 0);
    }
    flow.send(Math.min(going, coming));
    int[] comingOf = new int[going];
    Arrays.fill(comingOf, -1);
    for (int g = 0; g < going; g++) {
      for (int c = 0; c < coming; c++) {
        if (flow.flow(arc[g][c]) > 0 && saving.of(g, c) > 0) {
          comingOf[g] = c;
        }
      }
    }
    return comingOf;
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
