package entracte.cue;

import entracte.rig.Figures;
import entracte.setlist.Distance;

/**
 * Two pitches against each other, as an ear compares them.
 *
 * @param lowHz the lower one, in hertz
 * @param highHz the higher one, in hertz
 */
record Pitch(double lowHz, double highHz) {
  private static final double CENTS_PER_SEMITONE = 100;
  private static final double HUNDREDTH = 100;
  private static final double THOUSANDTH = 1000;

  Pitch {
    if (!(lowHz > 0 && lowHz <= highHz)) {
      throw new IllegalArgumentException(lowHz + " is no pitch below " + highHz);
    }
  }

  double cents() {
    return Distance.centsOf(highHz / lowHz);
  }

  /**
   * {@code 7 semitones above osc 1 (ratio 1.498; 1.49 beats a second against a pure 3 to 2)}.
   *
   * @param where above or below what
   */
  String words(String where) {
    return words(where, beats());
  }

  /**
   * The same where something keeps an ear from beats.
   *
   * @param beats what is said of them instead
   */
  String words(String where, String beats) {
    double semitones = cents() / CENTS_PER_SEMITONE;
    String size =
        rounded(semitones) + (rounded(semitones).equals("1") ? " semitone" : " semitones");
    return size + " " + where + " (ratio " + ratio() + beats + ")";
  }

  /** {@code 1.498}. */
  String ratio() {
    return Figures.plain(Math.round(highHz / lowHz * THOUSANDTH) / THOUSANDTH);
  }

  private String beats() {
    return Beat.near(cents()).map(beat -> "; " + beat.against(lowHz, highHz)).orElse("");
  }

  /** To a hundredth: finer than any ear. */
  static String rounded(double figure) {
    return Figures.plain(Math.round(figure * HUNDREDTH) / HUNDREDTH);
  }
}
