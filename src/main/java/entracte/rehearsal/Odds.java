package entracte.rehearsal;

/** Odds in words, never surer than they can be. */
final class Odds {
  private static final int WHOLE = 100;

  private Odds() {}

  /** {@code 62 %}; {@code under 1 %} and {@code over 99 %} at the ends. */
  static String text(double chance) {
    long percent = Math.round(chance * WHOLE);
    if (percent < 1) {
      return "under 1 %";
    }
    return percent >= WHOLE ? "over 99 %" : percent + " %";
  }
}
