package entracte.plan;

import entracte.rig.Cord;
import entracte.rig.Direction;
import entracte.rig.Module;
import entracte.rig.Socket;
import java.util.Optional;

/** One cord that a song needs, as far as the casting says where it goes. */
record Hop(Place from, Place to) {

  /**
   * Where a plug has to go.
   *
   * @param module the module
   * @param socket the very jack; empty if any tap of the multiple will do
   */
  record Place(Module module, Optional<Socket> socket) {
    static Place at(Socket socket) {
      return new Place(socket.module(), Optional.of(socket));
    }

    static Place anyTapOf(Module multiple) {
      return new Place(multiple, Optional.empty());
    }

    boolean takes(Socket plug) {
      return socket
          .map(plug::equals)
          .orElseGet(
              () -> plug.module().equals(module) && plug.jack().direction() == Direction.TAP);
    }

    @Override
    public String toString() {
      return socket.map(Socket::toString).orElseGet(() -> "a tap of " + module);
    }
  }

  boolean isMadeBy(Cord cord) {
    return from.takes(cord.source()) && to.takes(cord.sink());
  }

  @Override
  public String toString() {
    return from + " to " + to;
  }
}
