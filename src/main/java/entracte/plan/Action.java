package entracte.plan;

import entracte.rig.Control;
import entracte.rig.Position;
import entracte.rig.Socket;
import java.util.Optional;

/** Something the hands do in a changeover; each counts one move or two. */
public sealed interface Action {
  default int pulls() {
    return 0;
  }

  default int plugs() {
    return 0;
  }

  default int turns() {
    return 0;
  }

  default int flips() {
    return 0;
  }

  /** How long it takes at a tempo. */
  double seconds(Tempo tempo);

  default int moves() {
    return pulls() + plugs() + turns() + flips();
  }

  /** The cord in the jacks it is pulled from; empty if no plug is pulled. */
  default Optional<PluggedCord> cordBefore() {
    return Optional.empty();
  }

  /** The cord in the jacks it is plugged into; empty if no plug is plugged. */
  default Optional<PluggedCord> cordAfter() {
    return Optional.empty();
  }

  /** A cord goes back to the bag: two pulls. */
  record Remove(PluggedCord cord) implements Action {
    @Override
    public double seconds(Tempo tempo) {
      return tempo.pull(cord.cord().source()) + tempo.pull(cord.cord().sink());
    }

    @Override
    public int pulls() {
      return 2;
    }

    @Override
    public Optional<PluggedCord> cordBefore() {
      return Optional.of(cord);
    }
  }

  /** A cord comes from the bag: two plugs. */
  record Add(PluggedCord cord) implements Action {
    @Override
    public double seconds(Tempo tempo) {
      return tempo.plug(cord.cord().source()) + tempo.plug(cord.cord().sink());
    }

    @Override
    public int plugs() {
      return 2;
    }

    @Override
    public Optional<PluggedCord> cordAfter() {
      return Optional.of(cord);
    }
  }

  /** One plug of a cord moves, the other {@code stays} in its jack: one pull and one plug. */
  record Shift(PluggedCord from, PluggedCord to, Socket stays) implements Action {
    public Shift {
      if (!from.cord().uses(stays) || !to.cord().uses(stays)) {
        throw new IllegalArgumentException("no plug stays in " + stays);
      }
      if (from.lengthCm() != to.lengthCm()) {
        throw new IllegalArgumentException("a cord does not grow: " + from + ", " + to);
      }
    }

    @Override
    public double seconds(Tempo tempo) {
      return tempo.pull(from.cord().otherThan(stays)) + tempo.plug(to.cord().otherThan(stays));
    }

    @Override
    public int pulls() {
      return 1;
    }

    @Override
    public int plugs() {
      return 1;
    }

    @Override
    public Optional<PluggedCord> cordBefore() {
      return Optional.of(from);
    }

    @Override
    public Optional<PluggedCord> cordAfter() {
      return Optional.of(to);
    }
  }

  /** A knob is turned; {@code from} is empty while its position is unknown. */
  record Turn(Control knob, Optional<Position> from, Position to) implements Action {
    @Override
    public double seconds(Tempo tempo) {
      return tempo.turn(knob);
    }

    @Override
    public int turns() {
      return 1;
    }
  }

  /** A switch is thrown; {@code from} is empty while its position is unknown. */
  record Flip(Control toggle, Optional<Position> from, Position to) implements Action {
    @Override
    public double seconds(Tempo tempo) {
      return tempo.flip(toggle);
    }

    @Override
    public int flips() {
      return 1;
    }
  }
}
