package entracte.cue;

import entracte.rig.Figures;
import entracte.setlist.Distance;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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

  /** Faster ones run into a roar that nobody counts (common practice). */
  private static final double COUNTED_HZ = 10;

  /** A ratio that is meant, however high its harmonics, is met to the hundredth of a semitone. */
  private static final double MEANT_CENTS = 1;

  private static final int HIGHEST_HARMONIC = 16;

  /** Those whose harmonics are low enough to be heard well. */
  private static final List<Beat> HEARD =
      List.of(
          new Beat(1, 1),
          new Beat(9, 8),
          new Beat(6, 5),
          new Beat(5, 4),
          new Beat(4, 3),
          new Beat(7, 5),
          new Beat(3, 2),
          new Beat(8, 5),
          new Beat(5, 3),
          new Beat(9, 5),
          new Beat(2, 1),
          new Beat(12, 5),
          new Beat(5, 2),
          new Beat(3, 1),
          new Beat(4, 1),
          new Beat(8, 1));

  /** The pair to listen to for pitches that lie so many cents apart; empty if none is near. */
  static Optional<Beat> near(double cents) {
    return nearest(HEARD.stream(), cents, MEANT_CENTS)
        .or(() -> nearest(all(), cents, MEANT_CENTS))
        .or(() -> nearest(HEARD.stream(), cents, NEAR_CENTS));
  }

  private static Optional<Beat> nearest(Stream<Beat> beats, double cents, double within) {
    return beats
        .filter(beat -> beat.offBy(cents) < within)
        .min(Comparator.comparingDouble(beat -> beat.offBy(cents)));
  }

  /** The lowest harmonics first; a pair such as 6 and 4 is that of 3 and 2 once more. */
  private static Stream<Beat> all() {
    return IntStream.rangeClosed(1, HIGHEST_HARMONIC)
        .boxed()
        .flatMap(high -> IntStream.rangeClosed(1, high).mapToObj(low -> new Beat(high, low)));
  }

  private double offBy(double cents) {
    return Math.abs(cents() - cents);
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

  /**
   * What to count: {@code 1.49 beats a second; a cent changes that by 0.76}. Where that is too fast
   * to count, the way there leads over the pure interval, whose beats are slow.
   */
  String count(double lowHz, double highHz) {
    double rate = perSecond(lowHz, highHz);
    double there = rate <= COUNTED_HZ ? highHz : lowHz * high / low;
    String cent = Pitch.rounded(perSecondForACent(there));
    return rate <= COUNTED_HZ
        ? rate(rate) + "; a cent changes that by " + cent
        : rate(rate)
            + ", too fast to count: come near "
            + pure()
            + ", where a cent is "
            + cent
            + " beats a second";
  }

  /** {@code 1.49 beats a second against a pure 3 to 2}. */
  String against(double lowHz, double highHz) {
    double rate = perSecond(lowHz, highHz);
    return rate <= COUNTED_HZ ? rate(rate) + " against " + pure() : count(lowHz, highHz);
  }

  private String pure() {
    return high == 1 && low == 1 ? "unison" : "a pure " + high + " to " + low;
  }

  /** {@code no beat}, {@code 1 beat a second}, {@code 1.49 beats a second}. */
  private static String rate(double perSecond) {
    String figure = Pitch.rounded(perSecond);
    return perSecond < SLOWEST_HZ
        ? "no beat"
        : figure + (figure.equals("1") ? " beat a second" : " beats a second");
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
