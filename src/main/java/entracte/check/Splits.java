package entracte.check;

import entracte.check.Part.CastRole;
import entracte.check.Part.Net;
import entracte.check.Part.Owner;
import entracte.check.Part.Strip;
import entracte.rig.Group;
import entracte.rig.Kind;
import entracte.setlist.Connection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
    Optional<String> mend = Optional.empty();
    int split = 0;
    for (int i = 0; i < part.nets().size(); i++) {
      Net net = part.nets().get(i);
      if (net.sinks().size() > 1) {
        Connection at = part.song().patch().connections().get(i);
        last = at;
        int chain = all.fewest(net.sinks().size());
        if (chain < 0) {
          reportOne(last, equalJacks(part, net, last));
          return false;
        }
        needed += chain;
        mend = mend.or(() -> equalJacks(part, net, at));
        split++;
      }
    }
    int free = needed == 0 ? 0 : free(part, needed);
    if (free < needed) {
      reportAll(last, split, needed, free, mend);
    }
    return free >= needed;
  }

  /** Advice where the source is one of equal jacks, and none other is used. */
  private static Optional<String> equalJacks(Part part, Net net, Connection split) {
    Owner owner = net.source().owner();
    if (owner.strip() == Owner.OWN) {
      return Optional.empty();
    }
    CastRole role = part.roles().get(owner.role());
    Strip strip = role.channels().get(owner.strip());
    long others = role.channels().stream().filter(s -> s.jack().equals(strip.jack())).count() - 1;
    boolean enough =
        role.candidates().stream().allMatch(m -> count(strip, m.kind()) >= net.sinks().size());
    if (strip.isChannel() || others > 0 || !enough) {
      return Optional.empty();
    }
    List<String> names = new ArrayList<>();
    for (int i = 1; i <= net.sinks().size(); i++) {
      names.add(split.source().owner() + "." + strip.jack() + " " + i);
    }
    return Optional.of(
        "\"%s\" has equal jacks: let %s feed one jack each."
            .formatted(split.source().owner(), Quoted.list(names)));
  }

  private static int count(Strip strip, Kind kind) {
    return kind.equalJacks(strip.jack()).map(Group::count).orElse(1);
  }

  private void reportOne(Connection split, Optional<String> mend) {
    int sinks = split.sinks().size();
    if (all.multiples() == 0) {
      findings.error(
          split,
          "\"%s\" feeds %d jacks, and the rig has no multiple".formatted(split.source(), sinks),
          mend.orElse("A jack takes one plug: feed one jack, or add a multiple to the rig."));
    } else {
      findings.error(
          split,
          "\"%s\" feeds %d jacks, more than all multiples together can"
              .formatted(split.source(), sinks),
          mend.orElse("Feed fewer jacks, or add a multiple to the rig."));
    }
  }

  private void reportAll(Connection last, int split, int needed, int free, Optional<String> mend) {
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
        mend.orElse("Feed fewer jacks from one output, or add a multiple to the rig."));
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
