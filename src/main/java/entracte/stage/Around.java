package entracte.stage;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is around the night when it is drawn.
 *
 * @param nowMillis the clock, as events have it
 * @param clock the time of day as the player reads it
 * @param ports each port by name, and whether it is alive; the pedal's first
 * @param trouble the last thing that went wrong outside; empty if nothing
 */
public record Around(long nowMillis, String clock, Map<String, Boolean> ports, String trouble) {
  public Around {
    ports = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(ports));
  }
}
