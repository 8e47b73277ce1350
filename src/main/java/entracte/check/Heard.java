package entracte.check;

import entracte.check.Part.CastRole;
import entracte.rig.Direction;
import entracte.rig.Module;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Everything that is connected leads to an outlet in the end: a module that only takes signals in,
 * or one with a jack that goes straight to the desk. A modulation is heard through what it
 * modulates. Where signals run dry, the last role of their way is named; where all of them do, the
 * patch makes no sound, and is wrong.
 */
final class Heard {
  private final Set<Module> outlets = new HashSet<>();
  private final Findings findings;

  Heard(RigIndex rig, Findings findings) {
    this.findings = findings;
    rig.modules().stream().filter(m -> m.kind().isOutlet()).forEach(outlets::add);
    if (outlets.isEmpty() && !rig.modules().isEmpty()) {
      findings.note(
          rig.rig(),
          "nothing in the rig leads to the desk, so it is not checked whether voices are heard",
          "Describe the output as a module, or list the jacks that go to the desk as \"leaves\".");
    }
  }

  void check(Part part, PatchGraph graph, List<RoleDraft> drafts) {
    if (outlets.isEmpty()) {
      return;
    }
    BitSet goals = new BitSet();
    for (int node = 0; node < graph.nodes().size(); node++) {
      CastRole role = part.roles().get(graph.nodes().get(node).role());
      goals.set(node, !Collections.disjoint(outlets, role.candidates()));
    }
    BitSet heard = graph.leadingTo(goals);
    boolean silent = isSilent(part, graph, heard);
    for (List<Integer> knot : graph.knots()) {
      if (graph.isEnd(knot) && !heard.get(knot.get(0))) {
        report(knot, graph, drafts, silent);
      }
    }
  }

  /**
   * Whether a patch has voices, and none of them is heard. A voice has a pitch input, or nothing
   * comes into it and it gives no pitch itself, as a noise source and a microphone.
   */
  private static boolean isSilent(Part part, PatchGraph graph, BitSet heard) {
    BitSet fed = new BitSet();
    BitSet heardRoles = new BitSet();
    for (int number = 0; number < graph.nodes().size(); number++) {
      PatchGraph.Node node = graph.nodes().get(number);
      fed.set(node.role(), fed.get(node.role()) || node.side() != PatchGraph.Side.OUT);
      heardRoles.set(node.role(), heardRoles.get(node.role()) || heard.get(number));
    }
    BitSet voices = new BitSet();
    for (int role = 0; role < part.roles().size(); role++) {
      boolean source = !fed.get(role) && !Pitched.hasPitch(part, role, Direction.OUT);
      boolean sounds = source || Pitched.hasPitch(part, role, Direction.IN);
      voices.set(role, graph.isConnected(role) && sounds);
    }
    return !voices.isEmpty() && !voices.intersects(heardRoles);
  }

  private void report(
      List<Integer> knot, PatchGraph graph, List<RoleDraft> drafts, boolean silent) {
    Set<String> names = new LinkedHashSet<>();
    knot.forEach(node -> names.add(graph.name(node)));
    Object piece = drafts.get(graph.nodes().get(knot.get(0)).role()).piece();
    String lead = names.size() == 1 ? "it leads" : "they lead";
    if (silent) {
      findings.error(
          piece,
          "no voice of this patch is heard: %s lead%s to no output of the rig"
              .formatted(Quoted.list(names), names.size() == 1 ? "s" : ""),
          "Connect an output onward, till it comes to one that is heard.");
    } else {
      findings.warning(
          piece,
          Quoted.list(names)
              + (names.size() == 1 ? " is" : " are")
              + " never heard: "
              + lead
              + " to no output of the rig",
          "Connect an output of it onward, or leave it out.");
    }
  }
}
