package entracte.cue;

import java.util.Locale;

/** Stretches of time as a musician says them. */
public final class TimeText {
  private static final int MINUTE = 60;

  private TimeText() {}

  /** {@code 0:45}, {@code 1:03}, {@code 75:00}: short, where figures stand below each other. */
  public static String clock(double seconds) {
    long whole = Math.round(seconds);
    return String.format(Locale.ROOT, "%d:%02d", whole / MINUTE, whole % MINUTE);
  }

  /** {@code 45 s}, {@code 1 min 3 s}, {@code 5 min}; to the nearest second. */
  public static String of(double seconds) {
    long whole = Math.round(seconds);
    if (whole < MINUTE) {
      return whole + " s";
    }
    String minutes = whole / MINUTE + " min";
    return whole % MINUTE == 0 ? minutes : minutes + " " + whole % MINUTE + " s";
  }
}
