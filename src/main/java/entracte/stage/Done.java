package entracte.stage;

/** What became of a move. */
public enum Done {
  OPEN,
  DONE,
  /** Not made, and it will not be for this song. */
  LEFT
}
