package entracte.plan.sample;

/** What a random set may have beyond roles, cords and settings. */
public enum Feature {
  /** Knobs are wanted within an interval. */
  TOLERANCES,
  /** Songs come back to an earlier patch, with some knobs elsewhere. */
  RETURNING,
  /** Filters have a jumper that some patches care about. */
  JUMPERS,
  /** A mixer's channels can be shut, so that a cord may wait in them. */
  CLOSED,
  /** Sources feed several sinks. */
  MULTIPLES,
  /** Multiples of two sizes. */
  SIZES,
  /** Multiples so small that three sinks take a chain of two. */
  CHAINS,
  /** Roles that modules of two kinds can play. */
  SEVERAL_KINDS,
  /** Some roles name their module, some channels their number. */
  PINNED,
  /** No more cords than the fullest song needs, or one more. */
  TIGHT,
  /** Cords of several lengths. */
  LENGTHS,
  /** Nothing may be parked. */
  NO_PARKING,
  /** Something is plugged and set at the start. */
  GIVEN_START,
  /** The start is in mid-set: the first changeover counts. */
  MID_SET
}
