package entracte.rig;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;

/** Which knobs and switches move an oscillator's pitch, told by their names, and how far. */
public final class PitchControl {
  private static final Set<String> OCTAVE = Set.of("octave", "range", "footage");
  private static final Set<String> TUNE = Set.of("tune", "tuning", "coarse", "transpose");
  private static final double WRITTEN_PITCH_FEET = 8;

  private PitchControl() {}

  /** Whether it goes in octaves, named by the feet of an organ pipe. */
  public static boolean isOctave(String control) {
    return OCTAVE.contains(control.toLowerCase(Locale.ROOT));
  }

  /** Whether it is a knob whose figures are read as semitones. */
  public static boolean isTune(String control) {
    return TUNE.contains(control.toLowerCase(Locale.ROOT));
  }

  /**
   * How many times the frequency of the key: 8 foot sounds as written, 16 at the half of it; empty
   * for a position that is no footage.
   */
  public static OptionalDouble factor(String position) {
    String text = position.strip();
    return text.matches("(?:64|32|16|8|4|2|1)'?")
        ? OptionalDouble.of(WRITTEN_PITCH_FEET / Double.parseDouble(text.replace("'", "")))
        : OptionalDouble.empty();
  }
}
