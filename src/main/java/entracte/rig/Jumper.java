package entracte.rig;

import java.util.List;

/** A jumper inside a module: set before the show, with the power off and the mains unplugged. */
public record Jumper(String name, List<String> positions) {
  public Jumper {
    positions = List.copyOf(positions);
  }
}
