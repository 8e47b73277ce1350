package entracte.plan;

import entracte.rig.Control;
import entracte.rig.Socket;

/**
 * How long the hands take for one move, in seconds, for the aim {@link Aim#FASTEST}. What was done
 * before is not known to the planner while it counts, so the way of the hand enters as the average
 * way to that place. Every answer is positive and finite, and the same whenever it is asked.
 */
public interface Tempo {
  /** A second for every move. */
  static Tempo steady() {
    return new Tempo() {
      @Override
      public double pull(Socket at) {
        return 1;
      }

      @Override
      public double plug(Socket at) {
        return 1;
      }

      @Override
      public double turn(Control knob) {
        return 1;
      }

      @Override
      public double flip(Control toggle) {
        return 1;
      }
    };
  }

  /** The same in whole hundredths of a second, and at least one, as the planner counts. */
  default Tempo inHundredths() {
    Tempo exact = this;
    return new Tempo() {
      @Override
      public double pull(Socket at) {
        return hundredths(exact.pull(at));
      }

      @Override
      public double plug(Socket at) {
        return hundredths(exact.plug(at));
      }

      @Override
      public double turn(Control knob) {
        return hundredths(exact.turn(knob));
      }

      @Override
      public double flip(Control toggle) {
        return hundredths(exact.flip(toggle));
      }
    };
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
