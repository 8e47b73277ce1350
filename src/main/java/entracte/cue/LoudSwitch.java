package entracte.cue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Switches and jumpers that make a sound many times louder at one throw: those whose name or whose
 * positions say gain, drive or boost, and those with positions such as {@code x10} or {@code 20
 * dB}.
 */
final class LoudSwitch {
  private static final Set<String> WORDS = Set.of("gain", "drive", "boost", "overdrive");
  private static final String FACTOR = "x ?\\d+|[+-]?\\d+ ?db";

  /** What is said right at the step. */
  static final String CAUTION = " (main level down first, then bring it up slowly)";

  private LoudSwitch() {}

  /** {@link #CAUTION}; empty for a switch that is not loud. */
  static String caution(String name, List<String> positions) {
    boolean loud =
        Stream.concat(Stream.of(name), positions.stream())
            .map(text -> text.toLowerCase(Locale.ROOT))
            .anyMatch(LoudSwitch::saysLoud);
    return loud ? CAUTION : "";
  }

  private static boolean saysLoud(String text) {
    return text.matches(FACTOR) || Arrays.stream(text.split("\\W+")).anyMatch(WORDS::contains);
  }
}
