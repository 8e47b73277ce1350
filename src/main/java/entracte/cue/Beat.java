package entracte.cue;

import entracte.rig.Figures;
import entracte.setlist.Distance;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which harmonics of two tones beat against each other. A tone has harmonics at 2, 3, 4 ... times
 * its frequency; where two pitches stand near a ratio of small whole numbers {@code high:low}, the
 * harmonic number {@code low} of the upper one lies beside the harmonic number {@code high} of the
 * lower one, and the two beat as often in a second as they differ in hertz (Helmholtz, 1863).
 *
 * @param high of the lower tone, which harmonic
 * @param low of the upper tone, which harmonic
 */
record Beat(int high, int low) {
  /** Nearer than this an ear hears a pure interval out of tune rather than another interval. */
  static final double NEAR_CENTS = 35;

  /** Slower beats than one in ten seconds are none on a stage. */
  private static final double SLOWEST_HZ = 0.1;

  /** Those whose harmonics are low enough to be heard well. */
  private static final List<Beat> HEARD =
      List.of(
          new Beat(1, 1),
          new Beat(6, 5),
          new Beat(5, 4),
          new Beat(4, 3),
          new Beat(3, 2),
          new Beat(8, 5),
          new Beat(5, 3),
          new Beat(2, 1),
          new Beat(5, 2),
          new Beat(3, 1),
          new Beat(4, 1),
          new Beat(8, 1));

  /** The pair to listen to for pitches that lie so many cents apart; empty if none is near. */
  static Optional<Beat> near(double cents) {
    return HEARD.stream()
        .filter(beat -> Math.abs(beat.cents() - cents) < NEAR_CENTS)
        .min(Comparator.comparingDouble(beat -> Math.abs(beat.cents() - cents)));
  }

  double cents() {
    return Distance.centsOf((double) high / low);
  }

  /**
   * How often in a second it beats, the lower tone at {@code lowHz}, the upper at {@code highHz}.
   */
  double perSecond(double lowHz, double highHz) {
    return Math.abs(low * highHz - high * lowHz);
  }

  /** How much faster or slower it beats if the upper tone is a cent off. */
  double perSecondForACent(double highHz) {
    return low * highHz * (Distance.ratioOf(1) - 1);
  }

  /** {@code no beat}, {@code 1.49 beats a second}. */
  static String rate(double perSecond) {
    return perSecond < SLOWEST_HZ ? "no beat" : Pitch.rounded(perSecond) + " beats a second";
  }

  /** {@code harmonic 2 of osc 3 against harmonic 3 of osc 1}. */
  String words(String lower, String upper) {
    return high == 1 && low == 1
        ? upper + " against " + lower
        : harmonic(low) + upper + " against " + harmonic(high) + lower;
  }

  private static String harmonic(int number) {
    return number == 1 ? "" : "harmonic " + Figures.plain(number) + " of ";
  }
}
