package entracte.plan;

import entracte.rig.RigState;

/**
 * What the plan starts from.
 *
 * @param midSet whether the audience is waiting: then the way to the first song counts like any
 *     changeover, and none is a set-up
 */
public record Start(RigState state, boolean midSet) {
  /** Nothing plugged, before the show. */
  public static Start bare() {
    return new Start(RigState.bare(), false);
  }

  /** A rig left as it is, before the show. */
  public static Start beforeShow(RigState state) {
    return new Start(state, false);
  }

  /** A rig as it stands between two songs. */
  public static Start midSet(RigState state) {
    return new Start(state, true);
  }
}
