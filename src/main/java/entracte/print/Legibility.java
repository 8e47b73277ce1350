package entracte.print;

/**
 * How tall letters must be. ISO 9241-3 asks for capitals that fill 20 to 22 minutes of arc, and 16
 * at the least; 20 is what is used here. In dim light letters are half as tall again, as is common
 * practice.
 *
 * @param distanceMm from the eye to the paper
 */
public record Legibility(double distanceMm, boolean dim) {
  /** The least and the usual angle, in minutes of arc (ISO 9241-3). */
  static final double LEAST_ARC_MINUTES = 16;

  static final double ARC_MINUTES = 20;

  /** The least as a part of the usual height, for what stands below something larger. */
  static final double LEAST_PART = LEAST_ARC_MINUTES / ARC_MINUTES;

  /** Where nobody says: the paper hangs on the case, an arm's length away. */
  public static final double USUAL_DISTANCE_MM = 700;

  /** The near point of an eye, by the convention that magnifiers are rated by. */
  public static final double LEAST_DISTANCE_MM = 250;

  private static final double DIM = 1.5;
  private static final double MINUTES_PER_DEGREE = 60;

  public Legibility {
    if (!(distanceMm > 0 && distanceMm < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("nobody reads from " + distanceMm + " mm");
    }
  }

  public static Legibility usual() {
    return new Legibility(USUAL_DISTANCE_MM, false);
  }

  /** The height of a capital letter in mm, of the smallest letters on a page. */
  public double capitalMm() {
    return capitalMm(distanceMm, ARC_MINUTES) * (dim ? DIM : 1);
  }

  static double capitalMm(double distanceMm, double arcMinutes) {
    return 2 * distanceMm * Math.tan(Math.toRadians(arcMinutes / MINUTES_PER_DEGREE) / 2);
  }
}
