package entracte.plan;

import entracte.rig.Socket;
import java.util.List;
import java.util.Set;

/**
 * A cord as the hands know it: the two jacks it is in, whichever of them is the source, and its
 * length. The same wire before and after a changeover is one that nobody touched.
 */
record Wire(Set<Socket> jacks, int lengthCm) {
  static Wire of(PluggedCord plugged) {
    Socket source = plugged.cord().source();
    Socket sink = plugged.cord().sink();
    return new Wire(Set.copyOf(List.of(source, sink)), plugged.lengthCm());
  }

  /** Whether one may become the other while a plug stays: they share a jack and are as long. */
  boolean mayBecome(Wire other) {
    return lengthCm == other.lengthCm && jacks.stream().anyMatch(other.jacks::contains);
  }

  @Override
  public String toString() {
    return jacks.stream().map(Socket::toString).sorted().toList().toString();
  }
}
