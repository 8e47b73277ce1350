package entracte.stage;

/**
 * What a cell means. Whoever paints chooses the ink; what must be told apart differs in words or
 * signs as well, so one colour is enough.
 */
public enum Style {
  TEXT(0xE8C88F, false, false),
  /** What was done, or matters less. */
  DIM(0xB5A07C, false, false),
  STRONG(0xFFE3B0, true, false),
  /** The letters that are read from afar. */
  LARGE(0xFFE3B0, false, false),
  /** What needs attention. */
  WARN(0xFFAB8A, true, false),
  /** What a hand goes to, and the marked line of a menu: dark on bright. */
  MARKED(0xFFE3B0, true, true);

  /** Behind everything: black, so that the screen lights up neither stage nor eyes. */
  public static final int GROUND = 0x000000;

  private final int ink;
  private final boolean bold;
  private final boolean turned;

  Style(int ink, boolean bold, boolean turned) {
    this.ink = ink;
    this.bold = bold;
    this.turned = turned;
  }

  /** Red, green and blue, a byte each. */
  public int ink() {
    return ink;
  }

  public boolean bold() {
    return bold;
  }

  /** Whether ink and ground change places. */
  public boolean turned() {
    return turned;
  }
}
