package entracte.cue;

/** How long the hands take. */
public interface Pace {
  /** Seconds for one step, by hands that have rehearsed it. */
  double seconds(Step step);

  /** The pace assumed of a player of whom nothing is known yet. */
  static Pace estimated() {
    return new EstimatedPace();
  }
}
