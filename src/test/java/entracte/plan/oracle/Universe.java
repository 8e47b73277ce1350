package entracte.plan.oracle;

import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Rig;
import entracte.rig.RigState;
import entracte.rig.Socket;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Every cord that any song may require or that is plugged at the start. No plan gains by plugging
 * another one: at the changeover in which it comes, and at that in which it goes, leaving it in the
 * bag takes no more moves.
 */
final class Universe {
  private final Rig rig;
  private final RigState start;
  private final Map<Set<Socket>, Wire> wires = new LinkedHashMap<>();

  Universe(Rig rig, RigState start, Collection<SongVars> songs) {
    this.rig = rig;
    this.start = start;
    start.cords().forEach(this::add);
    songs.forEach(song -> song.required().keySet().forEach(this::add));
  }

  private void add(Cord cord) {
    Wire wire =
        wires.computeIfAbsent(
            Set.of(cord.source(), cord.sink()), jacks -> new Wire(cord, lengths(cord)));
    if (!wire.ways().contains(cord)) {
      wire.ways().add(cord);
    }
  }

  private List<Integer> lengths(Cord cord) {
    Module from = cord.source().module();
    Module to = cord.sink().module();
    OptionalInt shortest = rig.cordLengthCm(from, to);
    return rig.cords().countByLengthCm().keySet().stream()
        .filter(length -> shortest.isPresent() && length >= shortest.getAsInt())
        .toList();
  }

  Collection<Wire> wires() {
    return wires.values();
  }

  /** How many cords of that length join the two jacks at the start: none or one. */
  int atStart(Wire wire, int length) {
    for (int cord = 0; cord < start.cords().size(); cord++) {
      if (wire.ways().contains(start.cords().get(cord)) && start.lengthCm().get(cord) == length) {
        return 1;
      }
    }
    return 0;
  }

  /** Whether the start has a cord that runs this very way. */
  boolean runsAtStart(Cord way) {
    return start.cords().contains(way);
  }

  /** Whether the start touches a module: a plug in it, or a known position. */
  boolean touchedAtStart(Module module) {
    return start.cords().stream().anyMatch(c -> isOn(c, module))
        || start.positions().keySet().stream().anyMatch(c -> c.module().equals(module));
  }

  private static boolean isOn(Cord cord, Module module) {
    return cord.source().module().equals(module) || cord.sink().module().equals(module);
  }

  Position positionAtStart(Control control) {
    return start.positions().get(control);
  }

  Rig rig() {
    return rig;
  }
}
