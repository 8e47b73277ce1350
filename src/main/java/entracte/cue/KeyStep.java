package entracte.cue;

/**
 * How far a pitch goes from key to key.
 *
 * @param factor the part of the keyboard's voltage that comes to the oscillator
 * @param givesVolts an octave of the keyboard
 * @param takesVolts an octave of the oscillator
 */
record KeyStep(double factor, double givesVolts, double takesVolts) {
  private static final double KEYS = 12;
  private static final double CENTS_PER_OCTAVE = 1200;
  private static final double MILLIVOLTS = 1000;

  /** What is left of an octave of the keyboard. */
  double voltsPerOctave() {
    return factor * givesVolts;
  }

  double millivoltsPerKey() {
    return MILLIVOLTS * voltsPerOctave() / KEYS;
  }

  double centsPerKey() {
    return CENTS_PER_OCTAVE / KEYS * voltsPerOctave() / takesVolts;
  }

  /** The factor that a wanted step would need. */
  double factorFor(double centsPerKey) {
    return centsPerKey * KEYS / CENTS_PER_OCTAVE * takesVolts / givesVolts;
  }
}
