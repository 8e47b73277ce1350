package entracte.plan.oracle;

import entracte.rig.Cord;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.List;

/**
 * Two jacks that a cord may join, and the ways the signal may run in it: one, or between two taps
 * perhaps both.
 *
 * @param lengths the lengths in stock that reach, in cm
 */
record Wire(Socket one, Socket other, List<Cord> ways, List<Integer> lengths) {
  Wire(Cord first, List<Integer> lengths) {
    this(first.source(), first.sink(), new ArrayList<>(List.of(first)), lengths);
  }

  List<Socket> jacks() {
    return List.of(one, other);
  }
}
