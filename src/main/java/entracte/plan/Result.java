package entracte.plan;

/** What the planner found. */
public sealed interface Result {
  /**
   * A plan, with what is known about better ones.
   *
   * @param aim what it was to have least of
   * @param lowerBound no plan has fewer moves in its changeovers
   * @param setUpLowerBound no plan with that few moves has fewer in its set-up
   * @param quickest whether no plan takes fewer seconds in its changeovers, by the tempo given,
   *     unless it plugs a cord that no song needs then or later, to move it on with one plug
   * @param stopped why the search ended
   */
  record Planned(
      Aim aim,
      Plan plan,
      int lowerBound,
      int setUpLowerBound,
      boolean quickest,
      Stopped stopped,
      double searchSeconds)
      implements Result {
    /** Whether fewer moves were aimed at, and are impossible. */
    public boolean proven() {
      return aim == Aim.FEWEST && lowerBound == plan.moves();
    }

    /** Whether, besides, fewer moves in the set-up are impossible. */
    public boolean setUpProven() {
      return proven() && setUpLowerBound == plan.setUpMoves();
    }
  }

  /** No plan was found, and none was proved not to exist; {@code reason} is a sentence. */
  record NoneFound(String reason) implements Result {}

  /** No plan exists; {@code reason} says why, as a sentence. */
  record Impossible(String reason) implements Result {}

  /** Why a search ended. */
  enum Stopped {
    PROVEN,
    TIME,
    ROUNDS,
    CANCELLED
  }
}
