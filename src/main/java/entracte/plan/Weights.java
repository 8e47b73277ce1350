package entracte.plan;

/**
 * What a move costs, by the changeover it happens in. The aim counts moves in changeovers first and
 * moves in the set-up second, so both are kept in one number: a move in a changeover weighs more
 * than all moves that a set-up could ever have.
 *
 * @param setUpColumn the column whose changeover is the set-up; 0 (none) in mid-set
 */
record Weights(int setUpColumn) {
  /** One move in a changeover; one in the set-up weighs 1. */
  static final long CHANGEOVER = 1L << 20;

  static Weights of(Start start) {
    return new Weights(start.midSet() ? 0 : 1);
  }

  /** The weight of one move on the way to {@code column}. */
  long at(int column) {
    return column == setUpColumn ? 1 : CHANGEOVER;
  }

  static int changeoverMoves(long weight) {
    return (int) (weight / CHANGEOVER);
  }

  static int setUpMoves(long weight) {
    return (int) (weight % CHANGEOVER);
  }
}
