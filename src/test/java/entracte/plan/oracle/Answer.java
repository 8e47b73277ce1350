package entracte.plan.oracle;

import entracte.plan.Plan;
import java.util.Optional;

/**
 * What the reference solver says of a set.
 *
 * @param state how sure it is
 * @param moves the fewest moves found in all changeovers
 * @param movesBound no plan has fewer
 * @param setUpMoves the fewest moves found in the set-up of a plan with {@code moves}
 * @param setUpBound no plan with {@code moves} has fewer
 * @param plan a plan with those numbers; empty if none was found
 */
public record Answer(
    State state, int moves, int movesBound, int setUpMoves, int setUpBound, Optional<Plan> plan) {
  /** How sure the solver is. */
  public enum State {
    /** Both numbers are the least. */
    OPTIMAL,
    /** There is a plan; the bounds say how far from the best it may be. */
    FOUND,
    /** There is no plan. */
    IMPOSSIBLE,
    /** Neither a plan nor a proof that there is none. */
    UNKNOWN
  }

  static Answer without(State state) {
    return new Answer(state, 0, 0, 0, 0, Optional.empty());
  }
}
