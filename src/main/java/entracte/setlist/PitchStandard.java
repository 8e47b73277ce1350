package entracte.setlist;

/**
 * What a set is tuned by.
 *
 * @param a4Hz the frequency of the A above middle C
 * @param tuneOn the key that is held while the oscillators are tuned
 */
public record PitchStandard(double a4Hz, Note tuneOn) {
  /** ISO 16:1975. */
  public static final double ISO_A4_HZ = 440;

  public PitchStandard {
    if (!(a4Hz > 0)) {
      throw new IllegalArgumentException("A4 at " + a4Hz + " Hz");
    }
  }

  /** A4 at 440 Hz, and held while tuning. */
  public static PitchStandard usual() {
    return new PitchStandard(ISO_A4_HZ, Note.A4);
  }
}
