package entracte.rig;

import java.util.List;

/** A switch and the names of its positions, as printed on the panel. */
public record Switch(String name, List<String> positions) {
  public Switch {
    positions = List.copyOf(positions);
  }
}
