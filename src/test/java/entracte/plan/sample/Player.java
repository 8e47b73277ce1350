package entracte.plan.sample;

import entracte.rig.Direction;
import entracte.rig.Module;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A role while its patch is made, with a module that could play it. As long as every role has one
 * of its own, the song can be cast.
 *
 * @param labels how the patch calls the channels, if the module has any: one letter for each
 * @param free the holes that nothing is in
 */
record Player(String role, Module module, String labels, List<Hole> free) {
  /** A jack by its name in the patch, and the hole it would be. */
  record Hole(String name, Socket socket) {}

  Player(String role, Module module, String labels) {
    this(role, module, labels, new ArrayList<>());
    module.sockets().forEach(socket -> free.add(new Hole(nameOf(socket), socket)));
  }

  private String nameOf(Socket socket) {
    return switch (socket.group().form()) {
      case OWN, EQUAL_JACKS -> role + "." + socket.jack().name();
      case CHANNELS -> channel(socket.number()) + "." + socket.jack().name();
    };
  }

  String channel(int number) {
    return role + "." + labels.charAt(number - 1);
  }

  /** A free hole of that jack. */
  Optional<Hole> hole(String jack) {
    return free.stream().filter(h -> h.name().equals(role + "." + jack)).findFirst();
  }

  List<Hole> freeIns() {
    return free.stream().filter(h -> h.socket().jack().direction() == Direction.IN).toList();
  }

  /** Every output, free or not. */
  List<Hole> outs() {
    return module.sockets().stream()
        .filter(socket -> socket.jack().direction() == Direction.OUT)
        .map(socket -> new Hole(nameOf(socket), socket))
        .toList();
  }

  Hole out() {
    return outs().get(0);
  }
}
