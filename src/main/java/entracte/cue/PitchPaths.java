package entracte.cue;

import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.rig.Cord;
import entracte.rig.Direction;
import entracte.rig.Module;
import entracte.rig.NameWords;
import entracte.rig.Signal;
import entracte.rig.Socket;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Where the pitch of each module comes from in one song, followed back through its multiples. */
final class PitchPaths {
  /**
   * One pitch input that is fed.
   *
   * @param cord the cord in it
   * @param root the jack that the pitch comes from
   * @param load how many inputs hang on that jack; a cord that waits in one weighs as well
   */
  record Path(Cord cord, Socket root, long load) {}

  private final List<Cord> cords;
  private final List<Cord> needed;
  private final Map<String, Cord> intoTaps = new HashMap<>();
  private final Map<String, Long> loads = new HashMap<>();

  PitchPaths(SongPlan song) {
    cords = song.cords().stream().map(PluggedCord::cord).toList();
    needed = song.required().stream().map(PluggedCord::cord).toList();
    for (Cord cord : cords) {
      if (isTap(cord.sink())) {
        intoTaps.put(cord.sink().module().name(), cord);
      }
    }
    for (Cord cord : cords) {
      if (!isTap(cord.sink())) {
        loads.merge(root(cord).toString(), 1L, Long::sum);
      }
    }
  }

  /** The fed inputs of the module that are named for pitch. */
  List<Path> into(Module module) {
    return needed.stream()
        .filter(cord -> cord.sink().module().equals(module) && isPitchInput(cord.sink()))
        .map(cord -> new Path(cord, root(cord), loads.get(root(cord).toString())))
        .toList();
  }

  static boolean hasPitchInput(Module module) {
    return module.sockets().stream().anyMatch(PitchPaths::isPitchInput);
  }

  private static boolean isPitchInput(Socket socket) {
    return socket.jack().direction() == Direction.IN
        && said(socket).map(Signal.PITCH::equals).orElse(isNamedPitch(socket));
  }

  /** A kind that says what its jacks carry is believed; else all that a keyboard gives is pitch. */
  static boolean givesPitch(Socket root) {
    return said(root)
        .map(Signal.PITCH::equals)
        .orElse(
            root.module().sockets().stream()
                .anyMatch(s -> s.jack().direction() == Direction.OUT && isNamedPitch(s)));
  }

  private static Optional<Signal> said(Socket socket) {
    return socket.module().kind().electrics().signal(socket.jack().name());
  }

  private static boolean isNamedPitch(Socket socket) {
    return NameWords.say(socket.jack().name(), Set.of("pitch"));
  }

  /** The inputs that share one output, and whether a multiple that loses nothing is between. */
  record Shared(List<Socket> inputs, boolean buffered) {}

  /** All that hangs on the jack that this cord's pitch comes from. */
  Shared shared(Cord cord) {
    String root = root(cord).toString();
    List<Cord> all =
        cords.stream().filter(c -> !isTap(c.sink()) && root(c).toString().equals(root)).toList();
    boolean buffered =
        all.stream().anyMatch(c -> isTap(c.source()) && isBuffered(c.source().module()));
    return new Shared(all.stream().map(Cord::sink).toList(), buffered);
  }

  private static boolean isBuffered(Module multiple) {
    return multiple.kind().electrics().buffered();
  }

  private static boolean isTap(Socket socket) {
    return socket.jack().direction() == Direction.TAP;
  }

  /** Bounded by the number of cords, should a plan ever hold a ring of multiples. */
  Socket root(Cord cord) {
    Socket source = cord.source();
    for (int hops = 0; hops < cords.size() && isTap(source); hops++) {
      Cord before = intoTaps.get(source.module().name());
      if (before == null) {
        return source;
      }
      source = before.source();
    }
    return source;
  }
}
