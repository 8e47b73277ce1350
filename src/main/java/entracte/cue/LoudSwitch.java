package entracte.cue;

import entracte.rig.NameWords;
import entracte.rig.Toggle;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Switches and jumpers that make a sound many times louder at one throw: those whose name or whose
 * positions say gain, drive or boost, and those with gains among their positions, such as {@code
 * x10} or {@code 20 dB}.
 */
final class LoudSwitch {
  private static final Set<String> WORDS = Set.of("gain", "drive", "boost", "overdrive");

  /** What is said right at the step. */
  static final String CAUTION = " (main level down first, then bring it up slowly)";

  private LoudSwitch() {}

  /** {@link #CAUTION}; empty for a switch that is not loud. */
  static String caution(Toggle toggle) {
    boolean loud =
        Stream.concat(Stream.of(toggle.name()), toggle.positions().stream())
            .anyMatch(text -> NameWords.say(text, WORDS));
    return loud || toggle.hasGain() ? CAUTION : "";
  }
}
