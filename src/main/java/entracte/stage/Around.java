package entracte.stage;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is around the night when it is drawn.
 *
 * @param nowMillis the clock, as events have it
 * @param clock the time of day as the player reads it
 * @param ports each port by name, in the order of the rig
 * @param trouble the last thing that went wrong outside; empty if nothing
 */
public record Around(long nowMillis, String clock, Map<String, Port> ports, String trouble) {
  /** What is known of a port. */
  public enum Port {
    OK("ok"),
    /** It is not there. */
    LOST("LOST"),
    /** It is there, and what was sent last did not get through. */
    FAILS("FAILS");

    private final String word;

    Port(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  public Around {
    ports = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(ports));
  }
}
