package entracte.check;

import entracte.check.PatchGraph.Side;
import java.util.List;

/** Notes where a patch feeds back into itself: wanted at times, and loud. */
final class Loops {
  private final Findings findings;

  Loops(Findings findings) {
    this.findings = findings;
  }

  /** Names the shortest loop through the first node of each knot of loops. */
  void check(PatchGraph graph, List<RoleDraft> drafts) {
    for (List<Integer> knot : graph.knots()) {
      if (knot.size() > 1) {
        int first = knot.get(0);
        findings.note(
            drafts.get(graph.nodes().get(first).role()).piece(),
            sentence(graph.loop(first), graph),
            "Feedback can turn loud at once: bring its level up slowly.");
      }
    }
  }

  private static String sentence(List<Integer> loop, PatchGraph graph) {
    List<String> names =
        loop.stream()
            .filter(node -> graph.nodes().get(node).side() == Side.OUT)
            .map(node -> '"' + graph.name(node) + '"')
            .toList();
    return names.size() == 1
        ? names.get(0) + " feeds itself"
        : names.get(0)
            + " feeds "
            + String.join(", which feeds ", names.subList(1, names.size()))
            + ", which feeds "
            + names.get(0)
            + " again";
  }
}
