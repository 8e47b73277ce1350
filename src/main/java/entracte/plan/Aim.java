package entracte.plan;

/** What a plan shall have least of. */
public enum Aim {
  /** Moves in the changeovers, then moves in the set-up. */
  FEWEST,
  /** Predicted seconds in the changeovers, then in the set-up. */
  FASTEST,
  /** Overrun of the gaps, then moves as in {@link #FEWEST}. */
  EVEN
}
