package entracte.rehearsal;

import java.time.Instant;
import java.util.List;

/**
 * One changeover, timed.
 *
 * @param when it ended
 * @param where it was played
 * @param to the song it led to; may be another one in a later version of the set
 * @param mark the changeover's {@link Mark}: runs with the same mark are the same moves
 * @param seconds all of it
 * @param slips how often something went wrong on the way
 * @param makeup what it was expected to be made of; empty if nobody knew
 * @param each the steps in order; empty if only the whole was timed
 */
record Run(
    Instant when,
    Where where,
    String to,
    String mark,
    double seconds,
    int slips,
    Makeup makeup,
    List<Split> each) {

  /** Where a run was played. */
  enum Where {
    REHEARSAL,
    STAGE
  }

  /** One step: how long it took, and what it was expected to be made of. */
  record Split(double seconds, Makeup makeup) {
    Split {
      if (!(seconds >= 0 && seconds < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("a step of " + seconds + " s");
      }
    }
  }

  Run {
    each = List.copyOf(each);
    if (!(seconds > 0 && seconds < Double.POSITIVE_INFINITY) || slips < 0) {
      throw new IllegalArgumentException("a run of " + seconds + " s with " + slips + " slips");
    }
  }
}
