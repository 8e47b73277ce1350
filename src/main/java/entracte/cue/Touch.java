package entracte.cue;

import entracte.rig.Control;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Socket;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a hand does at one place of the case.
 *
 * @param name the jack or control with its module: {@code mix 1 channel 2 in}
 * @param travel how a knob or a switch goes; empty for plugs and for tuning
 */
public record Touch(Act act, Spot spot, String name, Optional<Travel> travel) {
  /** What is done. */
  public enum Act {
    PULL,
    PLUG,
    SWITCH,
    TURN,
    TUNE
  }

  /**
   * The way of a knob or a switch, in parts of its whole way: 0 at the low end, 1 at the high one.
   *
   * @param stops how many positions there are; 0 for a knob, which has no stops
   * @param from empty while unknown
   */
  public record Travel(int stops, OptionalDouble from, double to) {
    public Travel {
      if (to < 0 || to > 1 || from.orElse(0) < 0 || from.orElse(0) > 1) {
        throw new IllegalArgumentException("off the scale: " + from + " to " + to);
      }
    }
  }

  static Touch pull(Socket socket) {
    return new Touch(Act.PULL, Spot.of(socket), Wording.name(socket), Optional.empty());
  }

  static Touch plug(Socket socket) {
    return new Touch(Act.PLUG, Spot.of(socket), Wording.name(socket), Optional.empty());
  }

  static Touch tuned(Module module) {
    return new Touch(Act.TUNE, Spot.of(module), module.name(), Optional.empty());
  }

  static Touch turned(Control knob, Optional<Position> from, Position to) {
    return set(Act.TURN, knob, 0, from, to);
  }

  static Touch thrown(Control toggle, Optional<Position> from, Position to) {
    return set(Act.SWITCH, toggle, toggle.positions().size(), from, to);
  }

  private static Touch set(
      Act act, Control control, int stops, Optional<Position> from, Position to) {
    OptionalDouble start =
        from.map(at -> OptionalDouble.of(part(control, at))).orElse(OptionalDouble.empty());
    Travel travel = new Travel(stops, start, part(control, to));
    return new Touch(act, Spot.of(control), Wording.name(control), Optional.of(travel));
  }

  /** A saved state may hold a figure beyond the scale; the pointer then stands at its end. */
  private static double part(Control control, Position at) {
    if (at instanceof Position.At figure && control.scale().isPresent()) {
      double low = control.scale().get().low();
      double high = control.scale().get().high();
      return Math.max(0, Math.min(1, (figure.value() - low) / (high - low)));
    }
    int last = control.positions().size() - 1;
    return last < 1 ? 0 : Math.max(0, control.positions().indexOf(at.toString())) / (double) last;
  }
}
