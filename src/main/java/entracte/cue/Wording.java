package entracte.cue;

import entracte.plan.Action;
import entracte.plan.Plan;
import entracte.plan.PluggedCord;
import entracte.rig.Control;
import entracte.rig.CordStock;
import entracte.rig.Group;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Socket;
import entracte.rig.Toggle;
import java.util.Optional;

/** The words of single steps: always the module first, then the jack or control on it. */
final class Wording {
  private static final String IMPLIED = " multiple ";

  private Wording() {}

  /** {@code osc 1 saw}, {@code mix 1 channel 2 in}, {@code osc 1 pitch 2}. */
  static String name(Socket socket) {
    return socket.module().name()
        + switch (socket.group().form()) {
          case OWN -> " " + socket.jack().name();
          case CHANNELS -> " channel " + socket.number() + " " + socket.jack().name();
          case EQUAL_JACKS -> " " + socket.jack().name() + " " + socket.number();
        };
  }

  /** {@code filter 1 cutoff}, {@code mix 1 channel 2 level}. */
  static String name(Control control) {
    return control.module().name() + " " + local(control);
  }

  /** Without the module: {@code cutoff}, {@code channel 2 level}. */
  static String local(Control control) {
    String strip = control.group().form() == Group.Form.OWN ? "" : "channel " + control.number();
    return (strip + " " + control.name()).strip();
  }

  static String pull(PluggedCord cord) {
    return "PULL "
        + name(cord.cord().sink())
        + ", then "
        + name(cord.cord().source())
        + length(cord);
  }

  static String plug(PluggedCord cord) {
    return "PLUG "
        + name(cord.cord().source())
        + ", then "
        + name(cord.cord().sink())
        + length(cord);
  }

  static String move(Action.Shift shift) {
    return "MOVE from "
        + name(otherEnd(shift.from(), shift.stays()))
        + ", to "
        + name(otherEnd(shift.to(), shift.stays()))
        + "; keep the plug in "
        + name(shift.stays());
  }

  static String letHang(Action.Shift shift) {
    return "PULL "
        + name(otherEnd(shift.from(), shift.stays()))
        + ", let it hang; keep the plug in "
        + name(shift.stays());
  }

  static String plugHanging(Action.Shift shift) {
    return "PLUG "
        + name(otherEnd(shift.to(), shift.stays()))
        + " with the loose end of the cord in "
        + name(shift.stays());
  }

  static String turn(Action.Turn turn) {
    return "TURN " + name(turn.knob()) + change(turn.from(), turn.to());
  }

  static String flip(Action.Flip flip) {
    return "SWITCH "
        + name(flip.toggle())
        + change(flip.from(), flip.to())
        + LoudSwitch.caution(Toggle.of(flip.toggle()));
  }

  /**
   * {@code osc 2 plays bass}. A multiple that no role asked for has the name of the source it
   * splits, so it {@code splits keys pitch 2}.
   */
  static String plays(Module module, String role) {
    if (role.equals(module.name())) {
      return module.name() + " plays";
    }
    return isImplied(module, role)
        ? module.name() + " splits " + splits(role)
        : module.name() + " plays " + role;
  }

  /** Whether the role is a multiple that no patch asked for. */
  static boolean isImplied(Module module, String role) {
    return role.lastIndexOf(IMPLIED) > 0 && module.kind().taps() > 0;
  }

  /** What an implied multiple splits: {@code keys pitch 2}. */
  static String splits(String role) {
    return role.substring(0, role.lastIndexOf(IMPLIED)).replace('.', ' ');
  }

  static Socket otherEnd(PluggedCord cord, Socket stays) {
    return cord.cord().source().equals(stays) ? cord.cord().sink() : cord.cord().source();
  }

  /** {@code filter 1 other slope to 3-pole}. */
  static String jumper(Plan.JumperIn in, String position) {
    return in.module().name()
        + " "
        + in.jumper().name()
        + " to "
        + position
        + LoudSwitch.caution(Toggle.of(in.module().kind(), in.jumper()));
  }

  /** {@code osc 1 saw to mix 1 channel 2 in (60 cm)}, for lists of what is plugged. */
  static String both(PluggedCord cord) {
    return name(cord.cord().source()) + " to " + name(cord.cord().sink()) + length(cord);
  }

  private static String length(PluggedCord cord) {
    return cord.lengthCm() == CordStock.ANY_LENGTH ? "" : " (" + cord.lengthCm() + " cm)";
  }

  private static String change(Optional<Position> from, Position to) {
    return from.map(old -> " from " + old).orElse("") + " to " + to;
  }
}
