package entracte.check;

import entracte.finding.NearestName;
import entracte.rig.Direction;
import entracte.rig.Electrics;
import entracte.rig.Group;
import entracte.rig.Jack;
import entracte.rig.Kind;
import entracte.rig.Knob;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/** What a kind says of its voltages names jacks and knobs that it has. */
final class KindElectrics {
  private final Findings findings;

  KindElectrics(Findings findings) {
    this.findings = findings;
  }

  void check(Kind kind) {
    Electrics electrics = kind.electrics();
    List<String> jacks =
        kind.groups().stream().flatMap(g -> g.jacks().stream()).map(Jack::name).distinct().toList();
    List<String> knobs =
        kind.groups().stream().flatMap(g -> g.knobs().stream()).map(Knob::name).distinct().toList();
    known(kind, "signals", "jack", electrics.signals().keySet(), jacks);
    known(kind, "attenuates", "knob", electrics.attenuates().keySet(), knobs);
    electrics.playedBy().values().forEach(p -> known(kind, "played by", "jack", p, jacks));
    if (electrics.buffered() && kind.groups().stream().noneMatch(KindElectrics::hasTaps)) {
      findings.warning(
          kind,
          "buffered: \"" + kind.name() + "\" is no multiple",
          "Only what has taps can be buffered; leave the line out.");
    }
  }

  private static boolean hasTaps(Group group) {
    return group.jacks().stream().anyMatch(j -> j.direction() == Direction.TAP);
  }

  /** In the order of the alphabet, because what is said of a kind has no order of its own. */
  private void known(
      Kind kind, String key, String what, Collection<String> named, List<String> has) {
    for (String name : new TreeSet<>(named)) {
      if (!has.contains(name)) {
        findings.error(
            kind,
            "%s: \"%s\" has no %s \"%s\"".formatted(key, kind.name(), what, name),
            NearestName.advice(name, has));
      }
    }
  }
}
