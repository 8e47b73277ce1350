package entracte.stage;

import java.util.List;

/** The state of the show, and what it was before, for undo. */
public record Night(State now, List<Past> past) {
  /** So many steps can be taken back; enough for a night, and memory stays flat. */
  static final int MOST_PAST = 300;

  public Night {
    past = List.copyOf(past);
  }

  /**
   * What stood before something was done.
   *
   * @param label what was done, as a few words
   * @param isPlace whether it moved the place in the show, so that "back" takes it back
   */
  record Past(State before, String label, boolean isPlace, long atMillis) {}

  /** Before the show. */
  public static Night fresh() {
    return new Night(State.unplanned(), List.of());
  }

  public Phase phase() {
    return now.phase();
  }

  /** Whether a plan is awaited. */
  public boolean waiting() {
    return now.waiting();
  }

  /** The number of the plan that was asked for last. */
  public int request() {
    return now.request();
  }

  /** The rig as it stands. */
  public TrueRig rig() {
    return now.rig();
  }

  /** Whether a menu takes the keys. */
  public boolean menuOpen() {
    return now.menu().isPresent();
  }
}
