package entracte.plan;

import entracte.rig.Control;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What a move costs, by the place it is made at: one for each when moves are counted, hundredths of
 * a second when the hands shall be quick.
 */
final class Prices {
  static final double UNITS_PER_SECOND = 100;

  /** By socket. */
  final int[] pull;

  /** By socket. */
  final int[] plug;

  /** By control. */
  final int[] set;

  /** The price of a move on the average. */
  final double typical;

  /** Whether moves are counted. */
  final boolean areEven;

  private Prices(int[] pull, int[] plug, int[] set, boolean areEven) {
    IntStream all =
        IntStream.concat(
            IntStream.concat(Arrays.stream(pull), Arrays.stream(plug)), Arrays.stream(set));
    typical = all.average().orElse(1);
    this.pull = pull;
    this.plug = plug;
    this.set = set;
    this.areEven = areEven;
  }

  /** Every move costs one. */
  static Prices counted(RigIndex rig) {
    int[] ones = new int[rig.sockets.size()];
    int[] controls = new int[rig.controls.size()];
    Arrays.fill(ones, 1);
    Arrays.fill(controls, 1);
    return new Prices(ones, ones, controls, true);
  }

  /** Every move costs its time, in hundredths of a second, and at least one. */
  static Prices timed(RigIndex rig, Tempo tempo) {
    ToDoubleFunction<Control> time = c -> c.isKnob() ? tempo.turn(c) : tempo.flip(c);
    return new Prices(
        rig.sockets.stream().mapToInt(s -> units(tempo.pull(s))).toArray(),
        rig.sockets.stream().mapToInt(s -> units(tempo.plug(s))).toArray(),
        rig.controls.stream().mapToInt(c -> units(time.applyAsDouble(c))).toArray(),
        false);
  }

  static int units(double seconds) {
    return (int) Math.max(1, Math.round(seconds * UNITS_PER_SECOND));
  }

  int remove(int source, int sink) {
    return pull[source] + pull[sink];
  }

  int add(int source, int sink) {
    return plug[source] + plug[sink];
  }

  /** What is saved if a plug stays in its socket rather than being pulled and another plugged. */
  int stay(int socket) {
    return pull[socket] + plug[socket];
  }
}
