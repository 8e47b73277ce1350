package entracte.plan;

import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Position;
import entracte.rig.RigState;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A cord in its two jacks.
 *
 * @param lengthCm the length taken from the stock; {@code CordStock.ANY_LENGTH} where length does
 *     not matter. A cord that stays, or of which one plug stays, keeps its length.
 */
public record PluggedCord(Cord cord, int lengthCm) {
  /** The cords of a rig as it stands. */
  public static List<PluggedCord> of(RigState state) {
    return IntStream.range(0, state.cords().size())
        .mapToObj(i -> new PluggedCord(state.cords().get(i), state.lengthCm().get(i)))
        .toList();
  }

  /** A rig in which these cords are plugged. */
  public static RigState state(List<PluggedCord> cords, Map<Control, Position> positions) {
    return new RigState(
        cords.stream().map(PluggedCord::cord).toList(),
        cords.stream().map(PluggedCord::lengthCm).toList(),
        positions);
  }

  @Override
  public String toString() {
    return cord.toString();
  }
}
