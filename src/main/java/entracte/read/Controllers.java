package entracte.read;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;

/**
 * The controllers that MIDI 1.0 gives a use, by plain names. Channel-mode messages (120 to 127)
 * have none: they are not for a set.
 */
final class Controllers {
  private static final Map<String, Integer> NUMBERS = new LinkedHashMap<>();

  static {
    NUMBERS.put("modulation", 1);
    NUMBERS.put("breath", 2);
    NUMBERS.put("foot", 4);
    NUMBERS.put("portamento time", 5);
    NUMBERS.put("volume", 7);
    NUMBERS.put("balance", 8);
    NUMBERS.put("pan", 10);
    NUMBERS.put("expression", 11);
    NUMBERS.put("sustain", 64);
    NUMBERS.put("portamento", 65);
    NUMBERS.put("sostenuto", 66);
    NUMBERS.put("soft", 67);
    NUMBERS.put("legato", 68);
    NUMBERS.put("hold 2", 69);
    NUMBERS.put("timbre", 71);
    NUMBERS.put("release", 72);
    NUMBERS.put("attack", 73);
    NUMBERS.put("brightness", 74);
    NUMBERS.put("reverb", 91);
    NUMBERS.put("chorus", 93);
  }

  private Controllers() {}

  static OptionalInt number(String name) {
    Integer number = NUMBERS.get(name);
    return number == null ? OptionalInt.empty() : OptionalInt.of(number);
  }

  static Collection<String> names() {
    return NUMBERS.keySet();
  }
}
