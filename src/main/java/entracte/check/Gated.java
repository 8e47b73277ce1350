package entracte.check;

import entracte.check.Part.JackUse;
import entracte.check.Part.Net;
import entracte.rig.Direction;
import entracte.rig.Group;
import entracte.rig.Jack;
import entracte.rig.Kind;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What waits for a gate gets one: an envelope without a gate stays shut, and the voice is dumb. */
final class Gated {
  private static final Set<String> GATES = Set.of("gate", "trigger", "trig");

  private final Findings findings;

  Gated(Findings findings) {
    this.findings = findings;
  }

  void check(Part part, List<RoleDraft> drafts) {
    BitSet gated = new BitSet();
    BitSet used = new BitSet();
    for (Net net : part.nets()) {
      used.set(net.source().owner().role());
      for (JackUse sink : net.sinks()) {
        if (isGate(sink.jack())) {
          gated.set(sink.owner().role());
        }
      }
    }
    used.andNot(gated);
    used.stream()
        .forEach(
            role ->
                gate(part.roles().get(role).candidates().get(0).kind())
                    .ifPresent(gate -> report(drafts.get(role), gate)));
  }

  private void report(RoleDraft role, String gate) {
    findings.warning(
        role.piece(),
        "\"%s\" is used, and no cord comes to its \"%s\"".formatted(role.name(), gate),
        "Feed it a gate, unless it is meant to run by itself.");
  }

  static boolean isGate(String jack) {
    return GATES.contains(jack.toLowerCase(Locale.ROOT));
  }

  private static Optional<String> gate(Kind kind) {
    return kind.groups().stream()
        .map(Group::jacks)
        .flatMap(List::stream)
        .filter(jack -> jack.direction() == Direction.IN && isGate(jack.name()))
        .map(Jack::name)
        .findFirst();
  }
}
