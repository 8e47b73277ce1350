package entracte.rig;

import java.util.Objects;

/**
 * A MIDI instrument that follows along.
 *
 * @param port the name of the MIDI port it hangs on
 * @param channel 1 to 16
 * @param programsFrom 0 or 1: the number that its own display gives to the first program
 */
public record Gear(String name, String port, int channel, int programsFrom) {
  public Gear {
    Objects.requireNonNull(port);
  }
}
