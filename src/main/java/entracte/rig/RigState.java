package entracte.rig;

import java.util.List;
import java.util.Map;

/**
 * What is plugged and where the controls stand. A control that is missing stands at an unknown
 * position, so that setting it costs a move.
 *
 * @param lengthCm the length of each cord, by its place in {@code cords}
 */
public record RigState(List<Cord> cords, List<Integer> lengthCm, Map<Control, Position> positions) {
  public RigState {
    cords = List.copyOf(cords);
    lengthCm = List.copyOf(lengthCm);
    positions = Map.copyOf(positions);
    if (cords.size() != lengthCm.size()) {
      throw new IllegalArgumentException("each cord has one length");
    }
  }

  /** Nothing plugged, every position unknown. */
  public static RigState bare() {
    return new RigState(List.of(), List.of(), Map.of());
  }
}
