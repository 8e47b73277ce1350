package entracte.finding;

/** How grave a finding is. Only an error stops planning. */
public enum Severity {
  ERROR("error"),
  WARNING("warning"),
  NOTE("note");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  /** The word printed before the message. */
  public String word() {
    return word;
  }
}
