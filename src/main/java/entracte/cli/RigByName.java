package entracte.cli;

import entracte.cue.Change;
import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.CordStock;
import entracte.rig.Direction;
import entracte.rig.Position;
import entracte.rig.Rig;
import entracte.rig.RigState;
import entracte.rig.Socket;
import entracte.stage.TrueRig;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns the stage's names into the rig's jacks and controls, and back. */
final class RigByName {
  private final Rig rig;
  private final Map<String, Socket> sockets = new HashMap<>();
  private final Map<String, Control> controls = new HashMap<>();

  RigByName(Rig rig) {
    this.rig = rig;
    rig.modules()
        .forEach(
            module -> {
              module.sockets().forEach(socket -> sockets.put(socket.toString(), socket));
              module.controls().forEach(control -> controls.put(control.toString(), control));
            });
  }

  /** The state of the rig; a cord in a module that the rig has no more is left out. */
  RigState state(TrueRig truth) {
    List<Cord> cords = new ArrayList<>();
    List<Integer> lengths = new ArrayList<>();
    for (Change.Plugged plugged : truth.cords()) {
      Socket one = sockets.get(plugged.source());
      Socket other = sockets.get(plugged.sink());
      if (one != null && other != null) {
        boolean turned =
            one.jack().direction() == Direction.IN || other.jack().direction() == Direction.OUT;
        cords.add(turned ? new Cord(other, one) : new Cord(one, other));
        lengths.add(length(plugged, one, other));
      }
    }
    return new RigState(cords, lengths, positions(truth));
  }

  /** Of a cord that the player told of, the length is not known: the shortest that reaches. */
  private int length(Change.Plugged plugged, Socket one, Socket other) {
    if (plugged.lengthCm() != CordStock.ANY_LENGTH || !rig.cords().lengthMatters()) {
      return plugged.lengthCm();
    }
    return rig.cordLengthCm(one.module(), other.module())
        .orElse(rig.cords().countByLengthCm().lastKey());
  }

  private Map<Control, Position> positions(TrueRig truth) {
    Map<Control, Position> positions = new HashMap<>();
    truth
        .positions()
        .forEach(
            (name, position) -> {
              Control control = controls.get(name);
              if (control != null) {
                position(control, position).ifPresent(at -> positions.put(control, at));
              }
            });
    return positions;
  }

  /** Empty where the rig's file was changed since: nobody knows then. */
  private static Optional<Position> position(Control control, String position) {
    if (!control.isKnob()) {
      return Optional.<Position>of(new Position.Thrown(position))
          .filter(any -> control.positions().contains(position));
    }
    try {
      double at = Double.parseDouble(position);
      return Optional.<Position>of(new Position.At(at))
          .filter(any -> control.scale().stream().allMatch(scale -> scale.contains(at)));
    } catch (NumberFormatException wasASwitch) {
      return Optional.empty();
    }
  }

  static TrueRig truth(RigState state) {
    List<Change.Plugged> cords = new ArrayList<>();
    for (int cord = 0; cord < state.cords().size(); cord++) {
      cords.add(
          new Change.Plugged(
              state.cords().get(cord).source().toString(),
              state.cords().get(cord).sink().toString(),
              state.lengthCm().get(cord)));
    }
    Map<String, String> positions = new HashMap<>();
    state.positions().forEach((control, at) -> positions.put(control.toString(), at.toString()));
    return new TrueRig(cords, positions);
  }
}
