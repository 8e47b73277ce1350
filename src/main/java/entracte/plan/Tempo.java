package entracte.plan;

import entracte.rig.Control;
import entracte.rig.Socket;
import java.util.function.ToDoubleFunction;

/**
 * How long the hands take for one move, in seconds, for the aim {@link Aim#FASTEST}. What was done
 * before is not known to the planner while it counts, so the way of the hand enters as the average
 * way to that place. Every answer is positive and finite, and the same whenever it is asked.
 */
public interface Tempo {
  /** A second for every move. */
  static Tempo steady() {
    return of(plug -> 1, plug -> 1, knob -> 1, toggle -> 1);
  }

  /** Hands that pull and plug, turn and flip as these say. */
  static Tempo of(
      ToDoubleFunction<Socket> pull,
      ToDoubleFunction<Socket> plug,
      ToDoubleFunction<Control> turn,
      ToDoubleFunction<Control> flip) {
    return new Tempo() {
      @Override
      public double pull(Socket at) {
        return pull.applyAsDouble(at);
      }

      @Override
      public double plug(Socket at) {
        return plug.applyAsDouble(at);
      }

      @Override
      public double turn(Control knob) {
        return turn.applyAsDouble(knob);
      }

      @Override
      public double flip(Control toggle) {
        return flip.applyAsDouble(toggle);
      }
    };
  }

  /** The same in whole hundredths of a second, and at least one, as the planner counts. */
  default Tempo inHundredths() {
    return of(
        at -> hundredths(pull(at)),
        at -> hundredths(plug(at)),
        knob -> hundredths(turn(knob)),
        toggle -> hundredths(flip(toggle)));
  }

  private static double hundredths(double seconds) {
    return Prices.units(seconds) / Prices.UNITS_PER_SECOND;
  }

  /** Seconds to pull one plug out of a jack. */
  double pull(Socket at);

  /** Seconds to put one plug into a jack. */
  double plug(Socket at);

  /** Seconds to turn a knob to its figure, over an angle not yet known. */
  double turn(Control knob);

  /** Seconds to throw a switch. */
  double flip(Control toggle);
}
