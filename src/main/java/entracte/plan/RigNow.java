package entracte.plan;

import entracte.rig.Control;
import entracte.rig.Position;
import entracte.rig.RigState;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What is plugged and where the controls stand, as the hands find it. */
record RigNow(Set<Wire> wires, Map<Control, Position> positions) {
  static RigNow of(RigState state) {
    Set<Wire> wires = new HashSet<>();
    PluggedCord.of(state).forEach(cord -> wires.add(Wire.of(cord)));
    return new RigNow(wires, state.positions());
  }

  static RigNow of(SongPlan song) {
    return of(song.state());
  }
}
