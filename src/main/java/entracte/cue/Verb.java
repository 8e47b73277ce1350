package entracte.cue;

/** What the hands do in a step: the first word of its line, in the order of the work. */
public enum Verb {
  LOWER,
  PULL,
  MOVE,
  PLUG,
  SWITCH,
  TURN,
  TUNE,
  RAISE;

  /** The name used in files: {@code plug}. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
