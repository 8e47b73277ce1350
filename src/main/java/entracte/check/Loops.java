package entracte.check;

import java.util.BitSet;
import java.util.List;

/** Notes where a patch feeds back into itself: wanted at times, and loud. */
final class Loops {
  private final Findings findings;

  Loops(Findings findings) {
    this.findings = findings;
  }

  /** Names the shortest loop through the first role of each knot of loops. */
  void check(PatchGraph graph, List<RoleDraft> drafts) {
    BitSet told = new BitSet();
    for (int role = 0; role < graph.roles(); role++) {
      List<Integer> loop = told.get(role) ? List.of() : graph.loop(role);
      if (!loop.isEmpty()) {
        BitSet self = new BitSet();
        self.set(role);
        BitSet knot = graph.reachedFrom(role);
        knot.and(graph.leadingTo(self));
        told.or(knot);
        findings.note(
            drafts.get(role).piece(),
            sentence(loop, drafts),
            "Feedback can turn loud at once: bring its level up slowly.");
      }
    }
  }

  private static String sentence(List<Integer> loop, List<RoleDraft> drafts) {
    String first = '"' + drafts.get(loop.get(0)).name() + '"';
    if (loop.size() == 1) {
      return first + " feeds itself";
    }
    StringBuilder sentence = new StringBuilder(first);
    for (int i = 1; i < loop.size(); i++) {
      sentence.append(i == 1 ? " feeds \"" : ", which feeds \"");
      sentence.append(drafts.get(loop.get(i)).name()).append('"');
    }
    return sentence + ", which feeds " + first + " again";
  }
}
