package entracte.rig;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Equal parts of a module: {@code count} strips, each with the same jacks, knobs and switches.
 *
 * @param form what the strips are to the player, which decides how their jacks are named
 * @param name the jack's name for equal jacks and taps, else empty
 * @param closed the positions at which a channel passes nothing, so that a cord may wait in it;
 *     empty if the kind knows no such thing
 */
public record Group(
    Form form,
    String name,
    int count,
    List<Jack> jacks,
    List<Knob> knobs,
    List<Switch> switches,
    Map<String, Position> closed) {

  /** What the strips of a group are. */
  public enum Form {
    /** What the module has once. */
    OWN,
    /** A mixer's inputs: {@code mix 1.2.in}. */
    CHANNELS,
    /** Jacks that do the same, and the taps of a multiple: {@code osc 1.pitch.2}. */
    EQUAL_JACKS
  }

  public Group {
    jacks = List.copyOf(jacks);
    knobs = List.copyOf(knobs);
    switches = List.copyOf(switches);
    closed = Map.copyOf(closed);
    if (count < 1 || (form == Form.OWN && count != 1)) {
      throw new IllegalArgumentException(form + " with " + count + " strips");
    }
  }

  public Optional<Jack> jack(String jackName) {
    return jacks.stream().filter(j -> j.name().equals(jackName)).findFirst();
  }

  public Optional<Knob> knob(String knobName) {
    return knobs.stream().filter(k -> k.name().equals(knobName)).findFirst();
  }

  public Optional<Switch> switchNamed(String switchName) {
    return switches.stream().filter(s -> s.name().equals(switchName)).findFirst();
  }
}
