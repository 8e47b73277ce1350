package entracte.cue;

import entracte.rig.Figures;
import java.util.List;

/**
 * Two pitches against each other, as an ear compares them.
 *
 * @param lowHz the lower one, in hertz
 * @param highHz the higher one, in hertz
 */
record Pitch(double lowHz, double highHz) {
  /** A4 by ISO 16:1975. */
  static final double A4_HZ = 440;

  /** Nearer than this an ear hears a pure interval out of tune rather than another interval. */
  private static final double NEAR_CENTS = 35;

  /** Slower beats than one in ten seconds are none on a stage. */
  private static final double SLOWEST_BEAT_HZ = 0.1;

  private static final double CENTS_PER_OCTAVE = 1200;
  private static final double CENTS_PER_SEMITONE = 100;
  private static final double HUNDREDTH = 100;
  private static final double THOUSANDTH = 1000;

  /** An interval whose partials can be heard to beat. */
  private record Pure(int high, int low) {
    double cents() {
      return 1200 * Math.log((double) high / low) / Math.log(2);
    }
  }

  private static final List<Pure> PURE =
      List.of(
          new Pure(1, 1),
          new Pure(6, 5),
          new Pure(5, 4),
          new Pure(4, 3),
          new Pure(3, 2),
          new Pure(2, 1),
          new Pure(3, 1),
          new Pure(4, 1),
          new Pure(8, 1));

  Pitch {
    if (!(lowHz > 0 && lowHz <= highHz)) {
      throw new IllegalArgumentException(lowHz + " is no pitch below " + highHz);
    }
  }

  double cents() {
    return CENTS_PER_OCTAVE * Math.log(highHz / lowHz) / Math.log(2);
  }

  /** {@code 7 semitones (ratio 1.498; against a pure 3 to 2 it beats 1.49 times a second)}. */
  String words() {
    double semitones = cents() / CENTS_PER_SEMITONE;
    String size =
        rounded(semitones) + (rounded(semitones).equals("1") ? " semitone" : " semitones");
    double ratio = Math.round(highHz / lowHz * THOUSANDTH) / THOUSANDTH;
    return size + " (ratio " + Figures.plain(ratio) + beats() + ")";
  }

  private String beats() {
    for (Pure pure : PURE) {
      if (Math.abs(pure.cents() - cents()) < NEAR_CENTS) {
        return "; against a pure " + pure.high() + " to " + pure.low() + how(pure);
      }
    }
    return "";
  }

  private String how(Pure pure) {
    double beat = beatHz(pure.high(), pure.low());
    return beat < SLOWEST_BEAT_HZ ? " no beat" : " it beats " + rounded(beat) + " times a second";
  }

  /** How often in a second the partials beat that a pure interval of {@code high:low} shares. */
  double beatHz(int high, int low) {
    return Math.abs(low * highHz - high * lowHz);
  }

  /** To a hundredth: finer than any ear. */
  static String rounded(double figure) {
    return Figures.plain(Math.round(figure * HUNDREDTH) / HUNDREDTH);
  }
}
