package entracte.cue;

import entracte.rig.Cord;
import entracte.rig.Electrics;
import entracte.rig.Module;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the passive multiples of a song take from each pitch: every output on its way, the first and
 * those of the modules between, may be shared.
 */
final class Loads {
  private final PitchPaths paths;
  private final Map<String, List<String>> shares = new LinkedHashMap<>();
  private final Map<Long, List<String>> narrowed = new TreeMap<>();

  Loads(PitchPaths paths) {
    this.paths = paths;
  }

  /** The part that is left of the voltage by which the module was trimmed. */
  double kept(PitchRoute route) {
    return route.cords().stream()
        .filter(this::isShared)
        .mapToDouble(cord -> split(cord).kept(ohms(cord.sink())))
        .reduce(1, (a, b) -> a * b);
  }

  /** Takes note of a module's loss, for {@link #lines} and {@link #warnings}. */
  void add(Module module, PitchRoute route) {
    route.cords().stream()
        .filter(this::isShared)
        .forEach(
            cord ->
                name(module, shares.computeIfAbsent(share(cord, route), s -> new ArrayList<>())));
    double cents = route.factor() * Split.narrower(kept(route));
    if (cents >= PitchNotes.HEARD_CENTS) {
      name(module, narrowed.computeIfAbsent(Math.round(cents), c -> new ArrayList<>()));
    }
  }

  /** A module may have several inputs on the same multiple. */
  private static void name(Module module, List<String> names) {
    if (!names.contains(module.name())) {
      names.add(module.name());
    }
  }

  /** One line for all that lose the same to the same output. */
  List<String> lines() {
    return shares.entrySet().stream()
        .map(entry -> String.join(", ", entry.getValue()) + ": " + entry.getKey())
        .toList();
  }

  /** One warning for all that are narrowed alike. */
  List<String> warnings() {
    return narrowed.entrySet().stream().map(e -> narrow(e.getKey(), e.getValue())).toList();
  }

  private static String narrow(long cents, List<String> modules) {
    boolean one = modules.size() == 1;
    return String.join(", ", modules)
        + (one ? " is " : " are ")
        + cents
        + " cents an octave too narrow on a passive multiple: tune "
        + (one ? "it" : "them")
        + " in the middle of what you play";
  }

  /** An attenuator on the way makes less of the octave and of what it loses. */
  private String share(Cord cord, PitchRoute route) {
    List<Socket> inputs = paths.shared(cord).inputs();
    Socket root = paths.root(cord);
    return inputs.size()
        + " inputs share "
        + Wording.name(root)
        + ": an octave is "
        + Math.round(route.factor() * Split.narrower(split(cord).kept(ohms(cord.sink()))))
        + " cents narrower than with its cord alone"
        + assumed(root, inputs);
  }

  /** Only what the rig leaves unsaid. */
  private static String assumed(Socket root, List<Socket> inputs) {
    List<String> assumed = new ArrayList<>();
    if (electrics(root).ohmsOut().isEmpty()) {
      assumed.add("1 kohm out");
    }
    if (inputs.stream().anyMatch(input -> electrics(input).ohmsIn().isEmpty())) {
      assumed.add("100 kohm in");
    }
    return assumed.isEmpty()
        ? ""
        : " ("
            + String.join(" and ", assumed)
            + (assumed.size() == 1 ? " is" : " are")
            + " assumed)";
  }

  private boolean isShared(Cord cord) {
    PitchPaths.Shared shared = paths.shared(cord);
    return shared.inputs().size() > 1 && !shared.buffered();
  }

  private Split split(Cord cord) {
    return new Split(
        electrics(paths.root(cord)).ohmsOut().orElse(Electrics.USUAL_OHMS_OUT),
        paths.shared(cord).inputs().stream().map(Loads::ohms).toList());
  }

  private static double ohms(Socket input) {
    return electrics(input).ohmsIn().orElse(Electrics.USUAL_OHMS_IN);
  }

  private static Electrics electrics(Socket socket) {
    return socket.module().kind().electrics();
  }
}
