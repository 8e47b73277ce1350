package entracte.plan;

/**
 * What castings met by a {@link WindowProof} cost by all the rules of the set: with parking as the
 * set has it, and a bag that may run empty.
 */
final class WindowTruth {
  private final Problem problem;
  private final Ledger ledger;

  WindowTruth(Problem problem, Ledger ledger) {
    this.problem = problem;
    this.ledger = ledger;
  }

  /** Whether a casting that is whole keeps below a limit by the set's own rules. */
  boolean holds(int limit) {
    Casting casting = ledger.layout.casting;
    Ledger real = problem.parking ? ledger : new Ledger(problem, casting.copy(), Stock.LOOSE);
    long moves = real.moves();
    Truth truth = new Truth(real.layout);
    if (moves < limit * Weights.CHANGEOVER && truth.bagMayRunEmpty()) {
      moves = Math.max(moves, real.turning() + truth.plugging());
    }
    return moves < limit * Weights.CHANGEOVER;
  }

  /**
   * Whether the songs cast so far keep below a limit even if the bag may run empty.
   *
   * @param following the moves that come after them at least
   */
  boolean bagAllows(int limit, int following) {
    Truth truth = new Truth(ledger.layout);
    return !truth.bagMayRunEmpty()
        || Weights.changeoverMoves(ledger.turning() + truth.pluggingBound()) + following < limit;
  }
}
