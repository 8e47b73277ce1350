package entracte.check;

import entracte.check.Part.JackUse;
import entracte.check.Part.Net;
import entracte.check.Part.Owner;
import entracte.check.Part.Strip;
import entracte.rig.Direction;
import entracte.rig.Kind;
import entracte.setlist.Connection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Roles have cords, and a multiple that a patch names splits one signal and no more. */
final class Connected {
  private final Findings findings;

  Connected(Findings findings) {
    this.findings = findings;
  }

  void check(Part part, PatchGraph graph, List<RoleDraft> drafts) {
    for (int role = 0; role < drafts.size(); role++) {
      RoleDraft draft = drafts.get(role);
      if (draft.isDeclared() && !graph.isConnected(role) && hasJacks(draft)) {
        findings.warning(
            draft.piece(),
            "\"" + draft.name() + "\" is connected to nothing",
            "Connect it, or leave the role out: as it stands it only keeps a module busy.");
      }
    }
    checkMultiples(part, graph, drafts);
  }

  private static boolean hasJacks(RoleDraft draft) {
    return draft.offers().stream()
        .flatMap(offer -> offer.kind().groups().stream())
        .anyMatch(group -> !group.jacks().isEmpty());
  }

  /** The jacks of a passive multiple are one: two sources there meet output to output. */
  private void checkMultiples(Part part, PatchGraph graph, List<RoleDraft> drafts) {
    Map<Integer, String> fedBy = new HashMap<>();
    Set<Integer> splitting = new TreeSet<>();
    Set<Integer> joined = new HashSet<>();
    for (int i = 0; i < part.nets().size(); i++) {
      Net net = part.nets().get(i);
      Connection connection = part.song().patch().connections().get(i);
      if (isTap(part, net.source())) {
        splitting.add(net.source().owner().role());
      }
      for (int j = 0; j < net.sinks().size(); j++) {
        int role = net.sinks().get(j).owner().role();
        if (isTap(part, net.sinks().get(j))) {
          String first = fedBy.putIfAbsent(role, connection.source().text());
          if (first != null && joined.add(role)) {
            reportJoined(connection, first, drafts.get(role), j);
          }
        }
      }
    }
    splitting.removeAll(fedBy.keySet());
    splitting.forEach(role -> reportUnfed(drafts.get(role)));
  }

  private void reportJoined(Connection second, String first, RoleDraft multiple, int sink) {
    findings.error(
        second.sinks().get(sink),
        "\"%s\" and \"%s\" meet in the multiple \"%s\""
            .formatted(first, second.source(), multiple.name()),
        "A multiple copies one signal; two are blended in a mixer.");
  }

  private void reportUnfed(RoleDraft multiple) {
    findings.warning(
        multiple.piece(),
        "nothing feeds the multiple \"" + multiple.name() + "\"",
        "Connect an output to one of its taps.");
  }

  private static boolean isTap(Part part, JackUse jack) {
    Owner owner = jack.owner();
    Part.CastRole role = part.roles().get(owner.role());
    Kind kind = role.candidates().get(0).kind();
    if (owner.strip() == Owner.OWN) {
      return kind.own().jack(jack.jack()).orElseThrow().direction() == Direction.TAP;
    }
    Strip strip = role.channels().get(owner.strip());
    return strip.groupOf(kind).flatMap(g -> g.jack(jack.jack())).orElseThrow().direction()
        == Direction.TAP;
  }
}
