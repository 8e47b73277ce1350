package entracte.cue;

import java.util.List;

/** How long the hands take. */
public interface Pace {
  /** Seconds for one step, by hands that have rehearsed it. */
  double seconds(Step step);

  /** Seconds for all the steps on the way to a song, one after the other. */
  default double seconds(List<Step> steps) {
    return steps.stream().mapToDouble(this::seconds).sum();
  }

  /** How many timed runs of these very steps stand behind their seconds. */
  default int runs(List<Step> steps) {
    return 0;
  }

  /** Where the seconds come from, as a sentence. */
  default String origin() {
    return "Times are estimates until you have rehearsed.";
  }

  /** The pace assumed of a player of whom nothing is known yet. */
  static Pace estimated() {
    return new EstimatedPace();
  }
}
