package entracte.rehearsal;

import entracte.cue.Cue;
import java.util.OptionalDouble;

/**
 * How one changeover stands.
 *
 * @param cue the way to the song
 * @param outlook what its next runs may take
 */
record Standing(Cue cue, Outlook outlook) {
  /** The odds of making the gap in the next run; empty if the set gives none. */
  OptionalDouble odds() {
    return cue.gapSeconds().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(outlook.odds(cue.gapSeconds().getAsDouble(), 1));
  }

  /** The seconds over the gap that are to be expected of the run {@code ahead}. */
  double over(int ahead) {
    return cue.gapSeconds().isEmpty() ? 0 : outlook.over(cue.gapSeconds().getAsDouble(), ahead);
  }

  /** How many seconds over the gap one more run of practice saves. */
  double overSaved() {
    return over(1) - over(2);
  }

  /** How many seconds one more run of practice saves. */
  double secondsSaved() {
    return outlook.expected(1) - outlook.expected(2);
  }

  /** How many more runs until the gap is made with these odds. */
  Needed needed(double safe) {
    return Needed.of(outlook, cue.gapSeconds().orElse(Double.MAX_VALUE), safe);
  }
}
