package entracte.setlist;

import java.util.List;
import java.util.Optional;

/**
 * What a piece of MIDI gear is sent for a song.
 *
 * @param program as the gear's display counts it
 * @param bank high and low byte, 0 to 127 each
 */
public record GearCue(
    String gear, Optional<Integer> program, Optional<Bank> bank, List<ControlChange> controls) {
  public GearCue {
    controls = List.copyOf(controls);
  }

  /** Bank select, controllers 0 and 32. */
  public record Bank(int high, int low) {}

  /** One controller, 0 to 127, and its value, 0 to 127. */
  public record ControlChange(int controller, int value) {}
}
