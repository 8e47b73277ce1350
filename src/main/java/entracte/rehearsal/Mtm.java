package entracte.rehearsal;

import java.util.Arrays;

/**
 * Motion times of MTM-1, for trained hands without allowances, in TMU of 0.036 seconds (Maynard,
 * Stegemerten and Schwab, <em>Methods-Time Measurement</em>, 1948). Distances between the rows of a
 * table are interpolated, beyond its end the printed increment is added, as the method does.
 *
 * <p>The tables of reach, move, turn, grasp, release and position were read in published copies of
 * the data card. {@link #DISENGAGE} and the eye's travel were found in none and are from memory.
 */
final class Mtm {
  static final double SECONDS_PER_TMU = 0.036;
  static final double CM_PER_INCH = 2.54;

  /** Shorter ways than this all take the first time of a table. */
  private static final double[] INCHES = {
    0.75, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30
  };

  /** What the hand reaches for, or where it brings something. */
  enum Way {
    /** Reach to a fixed place or the other hand. */
    REACH_A(
        0.4, 2.0, 2.5, 4.0, 5.3, 6.1, 6.5, 7.0, 7.4, 7.9, 8.3, 8.7, 9.6, 10.5, 11.4, 12.3, 13.1,
        14.0, 14.9, 15.8, 16.7, 17.5),
    /** Reach to a single thing whose place varies. */
    REACH_B(
        0.7, 2.0, 2.5, 4.0, 5.3, 6.4, 7.8, 8.6, 9.3, 10.1, 10.8, 11.5, 12.9, 14.4, 15.8, 17.2, 18.6,
        20.1, 21.5, 22.9, 24.4, 25.8),
    /** Reach to a thing among others, or to a very small one. */
    REACH_C(
        0.7, 2.0, 3.6, 5.9, 7.3, 8.4, 9.4, 10.1, 10.8, 11.5, 12.2, 12.9, 14.2, 15.6, 17.0, 18.4,
        19.8, 21.2, 22.5, 23.9, 25.3, 26.7),
    /** Move to an approximate place. */
    MOVE_B(
        0.6, 2.0, 2.9, 4.6, 5.7, 6.9, 8.0, 8.9, 9.7, 10.6, 11.5, 12.2, 13.4, 14.6, 15.8, 17.0, 18.2,
        19.4, 20.6, 21.8, 23.1, 24.3),
    /** Move to an exact place. */
    MOVE_C(
        0.85, 2.0, 3.4, 5.2, 6.7, 8.0, 9.2, 10.3, 11.1, 11.8, 12.7, 13.5, 15.2, 16.9, 18.7, 20.4,
        22.1, 23.8, 25.5, 27.3, 29.0, 30.7);

    private final double perInchBeyond;
    private final double[] tmu;

    Way(double perInchBeyond, double... tmu) {
      this.perInchBeyond = perInchBeyond;
      this.tmu = tmu;
    }
  }

  /** One thing by itself. */
  static final double GRASP = 2.0;

  /** One of many that lie jumbled, of middle size. */
  static final double GRASP_JUMBLED = 9.1;

  static final double REGRASP = 5.6;
  static final double RELEASE = 2.0;

  /** The force that throws a switch. */
  static final double APPLY_PRESSURE = 10.6;

  static final double EYE_FOCUS = 7.3;

  /** A round plug into its jack, easy to hold: loose, close, tight. */
  private static final double[] POSITION = {5.6, 16.2, 43.0};

  /** A plug out of its jack, easy to hold: loose, close, tight. From memory. */
  private static final double[] DISENGAGE = {4.0, 7.5, 22.9};

  private static final double[] DEGREES = {30, 45, 60, 75, 90, 105, 120, 135, 150, 165, 180};
  private static final double[] TURN = {2.8, 3.5, 4.1, 4.8, 5.4, 6.1, 6.8, 7.4, 8.1, 8.7, 9.4};
  private static final double WHOLE_TURN = 180;

  private Mtm() {}

  static double seconds(double tmu) {
    return tmu * SECONDS_PER_TMU;
  }

  /** TMU over so many centimetres. */
  static double over(Way way, double cm) {
    double inches = cm / CM_PER_INCH;
    double longest = INCHES[INCHES.length - 1];
    double beyond = Math.max(0, inches - longest) * way.perInchBeyond;
    return interpolate(INCHES, way.tmu, inches) + beyond;
  }

  /**
   * TMU to lift and bring something heavy instead of something light.
   *
   * @param dynamic the factor of the weight class
   * @param fixed its constant, in TMU
   */
  static double weighted(double tmu, double dynamic, double fixed) {
    return tmu * dynamic + fixed;
  }

  /** TMU for a small knob; after each half turn the fingers take hold anew. */
  static double turn(double degrees) {
    double left = degrees;
    double tmu = 0;
    while (left > WHOLE_TURN) {
      tmu += TURN[TURN.length - 1] + REGRASP;
      left -= WHOLE_TURN;
    }
    return tmu + interpolate(DEGREES, TURN, left);
  }

  /** TMU to put a plug in; {@code fit} is 0 for loose, 1 for close, 2 for tight. */
  static double position(int fit) {
    return POSITION[fit];
  }

  /** TMU to pull a plug out; {@code fit} is 0 for loose, 1 for close, 2 for tight. */
  static double disengage(int fit) {
    return DISENGAGE[fit];
  }

  private static double interpolate(double[] at, double[] values, double x) {
    if (x <= at[0]) {
      return values[0];
    }
    if (x >= at[at.length - 1]) {
      return values[values.length - 1];
    }
    int found = Arrays.binarySearch(at, x);
    int above = found >= 0 ? found : -found - 1;
    double part = (x - at[above - 1]) / (at[above] - at[above - 1]);
    return values[above - 1] + part * (values[above] - values[above - 1]);
  }
}
