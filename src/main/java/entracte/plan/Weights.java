package entracte.plan;

import java.util.Arrays;

/**
 * What a move costs, by the changeover it happens in. The aim counts moves in changeovers first and
 * moves in the set-up second, so both are kept in one number: a move in a changeover weighs more
 * than all moves that a set-up could ever have.
 *
 * <p>Where gaps are too short, moves in some changeovers may be made to weigh more than in others.
 * Such weights serve to search with; moves cannot be read off their sums.
 */
final class Weights {
  /** One move in a changeover; one in the set-up weighs 1. */
  static final long CHANGEOVER = 1L << 20;

  /** How much finer than a move in the set-up a mere inclination is. */
  private static final int FINER = 1 << 12;

  /** The column whose changeover is the set-up; 0 (none) in mid-set. */
  private final int setUpColumn;

  /** By column; empty if all changeovers weigh the same. */
  private final long[] uneven;

  private Weights(int setUpColumn, long[] uneven) {
    this.setUpColumn = setUpColumn;
    this.uneven = uneven;
  }

  static Weights of(Start start) {
    return new Weights(start.midSet() ? 0 : 1, new long[0]);
  }

  /**
   * Weights by which some changeovers are to be spared.
   *
   * @param factors how many times its usual weight a move has, by column; at least 1
   */
  Weights pressed(double[] factors) {
    long[] at = new long[factors.length];
    Arrays.setAll(
        at, column -> (long) (at(column) * (column == setUpColumn ? 1 : factors[column])));
    return new Weights(setUpColumn, at);
  }

  /**
   * Weights that count as before, and of plans that count the same prefer one that spares some
   * changeovers.
   *
   * @param dearer a small number for each column, higher for those to be spared
   */
  Weights inclined(int[] dearer) {
    long[] at = new long[dearer.length];
    Arrays.setAll(at, column -> at(column) * FINER + (column == setUpColumn ? 0 : dearer[column]));
    return new Weights(setUpColumn, at);
  }

  int setUpColumn() {
    return setUpColumn;
  }

  /** Whether all changeovers weigh the same. */
  boolean areEven() {
    return uneven.length == 0;
  }

  /** The weight of one move on the way to {@code column}. */
  long at(int column) {
    if (!areEven()) {
      return uneven[column];
    }
    return column == setUpColumn ? 1 : CHANGEOVER;
  }

  /** The least weight of one move on the way to any of some columns. */
  long least(int from, int to) {
    long least = Long.MAX_VALUE;
    for (int column = from; column <= to; column++) {
      least = Math.min(least, at(column));
    }
    return least;
  }

  /** What a plan weighs if all changeovers weigh the same. */
  static long of(Plan plan) {
    return plan.moves() * CHANGEOVER + plan.setUpMoves();
  }

  static int changeoverMoves(long weight) {
    return (int) (weight / CHANGEOVER);
  }

  static int setUpMoves(long weight) {
    return (int) (weight % CHANGEOVER);
  }
}
