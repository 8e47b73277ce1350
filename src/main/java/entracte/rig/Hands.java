package entracte.rig;

/**
 * What is assumed of the player's hands before anything was rehearsed. Timed runs replace it bit by
 * bit.
 *
 * @param light what dim light and nerves make of every time but tuning: 1 in a bright room, alone
 * @param readSeconds to read a line and know what it wants
 * @param tuneSeconds to tune one module in unison or octaves; other intervals take longer
 * @param bagCm the way from the case to the bag of cords
 * @param sweepDegrees the angle a knob turns from one end of its scale to the other
 * @param plugs how tight the plugs sit in the jacks
 */
public record Hands(
    double light,
    double readSeconds,
    double tuneSeconds,
    double bagCm,
    double sweepDegrees,
    Fit plugs) {
  /** How tight a plug sits. */
  public enum Fit {
    LOOSE,
    CLOSE,
    TIGHT
  }

  /** Estimates; no source was found that measured players. */
  private static final Hands USUAL = new Hands(1.25, 1.2, 8, 60, 300, Fit.CLOSE);

  public Hands {
    for (double each : new double[] {light, readSeconds, tuneSeconds, bagCm, sweepDegrees}) {
      if (!(each > 0 && each < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("hands need something above nothing: " + each);
      }
    }
  }

  /** Of whom nothing is known. */
  public static Hands usual() {
    return USUAL;
  }
}
