package entracte.cue;

/** Stretches of time as a musician says them. */
public final class TimeText {
  private static final int MINUTE = 60;

  /** Below this, seconds alone are easier to compare. */
  private static final int LONGEST_IN_SECONDS = 99;

  private TimeText() {}

  /** {@code 63 s}, {@code 2 min 40 s}, {@code 5 min}; to the nearest second. */
  public static String of(double seconds) {
    long whole = Math.round(seconds);
    if (whole <= LONGEST_IN_SECONDS) {
      return whole + " s";
    }
    String minutes = whole / MINUTE + " min";
    return whole % MINUTE == 0 ? minutes : minutes + " " + whole % MINUTE + " s";
  }
}
