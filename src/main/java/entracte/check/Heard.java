package entracte.check;

import entracte.check.Part.CastRole;
import entracte.rig.Direction;
import entracte.rig.Group;
import entracte.rig.Jack;
import entracte.rig.Kind;
import entracte.rig.Module;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Everything that is connected leads to an outlet in the end: a module that only takes signals in,
 * or one with a jack that goes straight to the desk. A modulation is heard through what it
 * modulates. Where signals run dry, the last role of their way is named.
 */
final class Heard {
  private final Set<Module> outlets = new HashSet<>();
  private final Findings findings;

  Heard(RigIndex rig, Findings findings) {
    this.findings = findings;
    rig.modules().stream().filter(m -> isOutlet(m.kind())).forEach(outlets::add);
    if (outlets.isEmpty() && !rig.modules().isEmpty()) {
      findings.note(
          rig.rig(),
          "nothing in the rig leads to the desk, so it is not checked whether voices are heard",
          "Describe the output as a module, or list the jacks that go to the desk as \"leaves\".");
    }
  }

  private static boolean isOutlet(Kind kind) {
    List<Jack> jacks = kind.groups().stream().map(Group::jacks).flatMap(List::stream).toList();
    boolean onlyInputs =
        !jacks.isEmpty() && jacks.stream().allMatch(j -> j.direction() == Direction.IN);
    return onlyInputs || !kind.leaves().isEmpty();
  }

  void check(Part part, PatchGraph graph, List<RoleDraft> drafts) {
    if (outlets.isEmpty()) {
      return;
    }
    BitSet goals = new BitSet();
    for (int role = 0; role < graph.roles(); role++) {
      CastRole cast = part.roles().get(role);
      goals.set(role, !Collections.disjoint(outlets, cast.candidates()));
    }
    BitSet heard = graph.leadingTo(goals);
    BitSet told = new BitSet();
    for (int role = 0; role < graph.roles(); role++) {
      if (graph.isConnected(role) && !heard.get(role) && !told.get(role)) {
        told.or(reportEnd(role, graph, drafts));
      }
    }
  }

  /** Reports the role if all its ways lead back to it; returns the roles it speaks for. */
  private BitSet reportEnd(int role, PatchGraph graph, List<RoleDraft> drafts) {
    BitSet self = new BitSet();
    self.set(role);
    BitSet onward = graph.reachedFrom(role);
    BitSet beyond = (BitSet) onward.clone();
    beyond.andNot(graph.leadingTo(self));
    if (!beyond.isEmpty()) {
      return new BitSet();
    }
    List<String> names = new ArrayList<>();
    onward.stream().forEach(each -> names.add(drafts.get(each).name()));
    findings.warning(
        drafts.get(role).piece(),
        Quoted.list(names)
            + (names.size() == 1 ? " is never heard: it leads" : " are never heard: they lead")
            + " to no output of the rig",
        "Connect an output of it onward, or leave it out.");
    return onward;
  }
}
