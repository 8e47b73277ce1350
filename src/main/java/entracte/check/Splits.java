package entracte.check;

import entracte.check.Part.CastRole;
import entracte.check.Part.Net;
import entracte.setlist.Connection;
import java.util.ArrayList;
import java.util.List;

/**
 * A source with several sinks finds multiples that no role needs. Exact where all multiples have
 * the same number of taps; else it reports only what certainly fails, and leaves the rest to the
 * planner.
 */
final class Splits {
  private final RigIndex rig;
  private final Chains all;
  private final Findings findings;

  Splits(RigIndex rig, Findings findings) {
    this.rig = rig;
    this.all = new Chains(rig.multiples());
    this.findings = findings;
  }

  /** Whether the multiples may suffice. */
  boolean check(Part part) {
    int needed = 0;
    Connection last = null;
    int split = 0;
    for (int i = 0; i < part.nets().size(); i++) {
      Net net = part.nets().get(i);
      if (net.sinks().size() > 1) {
        last = part.song().patch().connections().get(i);
        int chain = all.fewest(net.sinks().size());
        if (chain < 0) {
          reportOne(last);
          return false;
        }
        needed += chain;
        split++;
      }
    }
    int free = needed == 0 ? 0 : free(part, needed);
    if (free < needed) {
      reportAll(last, split, needed, free);
    }
    return free >= needed;
  }

  private void reportOne(Connection split) {
    int sinks = split.sinks().size();
    if (all.multiples() == 0) {
      findings.error(
          split,
          "\"%s\" feeds %d jacks, and the rig has no multiple".formatted(split.source(), sinks),
          "A jack takes one plug: feed one jack, or add a multiple to the rig.");
    } else {
      findings.error(
          split,
          "\"%s\" feeds %d jacks, more than all multiples together can"
              .formatted(split.source(), sinks),
          "Feed fewer jacks, or add a multiple to the rig.");
    }
  }

  private void reportAll(Connection last, int split, int needed, int free) {
    String who =
        split == 1
            ? "\"" + last.source() + "\" feeds several jacks and needs "
            : split + " outputs feed several jacks each and need ";
    findings.error(
        last,
        who
            + Quoted.count(needed, "multiple")
            + "; "
            + (free == 1 ? "1 is" : free + " are")
            + " free",
        "Feed fewer jacks from one output, or add a multiple to the rig.");
  }

  /** How many multiples are free, up to {@code needed}, when every role has its module. */
  private int free(Part part, int needed) {
    List<int[]> options = new ArrayList<>();
    for (CastRole role : part.roles()) {
      options.add(rig.numbers(role.candidates()));
    }
    int[] multiples = rig.numbers(rig.multiples());
    for (int i = 0; i < Math.min(needed, multiples.length); i++) {
      options.add(multiples);
    }
    return new Matching(options, rig.modules().size()).size() - part.roles().size();
  }
}
