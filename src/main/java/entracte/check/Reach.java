package entracte.check;

import entracte.check.Part.JackUse;
import entracte.check.Part.Net;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.setlist.Connection;
import entracte.setlist.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Where cords have lengths: each connection has some casting for which a cord is long enough, and
 * the long cords suffice if every connection takes the casting that needs the shortest. What only
 * several connections together make impossible is left to the planner.
 */
final class Reach {
  /** A cord and the least length in stock that may do for it. */
  private record Hop(Connection connection, int lengthCm) {}

  /** A jack that is farther from its source than the longest cord. */
  private record Far(End end, int cm) {
    @Override
    public String toString() {
      return "\"" + end + "\" (" + cm + " cm)";
    }
  }

  /** 1.2 x 25 + 10 is 40, whatever binary fractions make of it. */
  private static final double ROUNDING_CM = 1e-9;

  private final Rig rig;
  private final List<Module> multiples;
  private final Findings findings;

  Reach(RigIndex rig, Findings findings) {
    this.rig = rig.rig();
    this.multiples = rig.multiples();
    this.findings = findings;
  }

  void check(Part part) {
    if (!rig.cords().lengthMatters() || rig.cords().total() == 0) {
      return;
    }
    List<Hop> hops = new ArrayList<>();
    List<Far> far = new ArrayList<>();
    for (int i = 0; i < part.nets().size(); i++) {
      Connection connection = part.song().patch().connections().get(i);
      hops(part, part.nets().get(i), connection, hops, far);
    }
    if (!far.isEmpty()) {
      report(part, far);
    }
    checkStock(part, hops);
  }

  private void hops(Part part, Net net, Connection connection, List<Hop> hops, List<Far> far) {
    List<Module> from = players(part, net.source());
    if (net.sinks().size() > 1) {
      hop(connection.source(), connection, shortest(from, multiples), hops, far);
      from = multiples;
    }
    for (int i = 0; i < net.sinks().size(); i++) {
      JackUse sink = net.sinks().get(i);
      boolean itself =
          net.sinks().size() == 1 && sink.owner().role() == net.source().owner().role();
      double cm =
          itself ? rig.reachCm(from.get(0), from.get(0)) : shortest(from, players(part, sink));
      hop(connection.sinks().get(i), connection, cm, hops, far);
    }
  }

  private static List<Module> players(Part part, JackUse jack) {
    return part.roles().get(jack.owner().role()).candidates();
  }

  /** Between two modules, which are never one. */
  private double shortest(List<Module> from, List<Module> to) {
    double shortest = Double.POSITIVE_INFINITY;
    for (Module a : from) {
      for (Module b : to) {
        if (!a.equals(b)) {
          shortest = Math.min(shortest, rig.reachCm(a, b));
        }
      }
    }
    return shortest;
  }

  private void hop(End end, Connection connection, double cm, List<Hop> hops, List<Far> far) {
    int length = rig.cords().lengthFor(cm).orElse(-1);
    if (length >= 0) {
      hops.add(new Hop(connection, length));
    } else {
      far.add(new Far(end, (int) Math.ceil(cm - ROUNDING_CM)));
    }
  }

  /** All jacks of one patch at once: where the cords are too short, they are so for many. */
  private void report(Part part, List<Far> far) {
    String message =
        far.size() == 1
            ? "no cord of the patch \"%s\" reaches \"%s\": it takes %d cm, and the longest has %d"
                .formatted(name(part), far.get(0).end(), far.get(0).cm(), longest())
            : "no cord of the patch \"%s\" reaches %s; the longest has %d cm"
                .formatted(
                    name(part), Quoted.joined(far.stream().map(Far::toString).toList()), longest());
    findings.error(
        far.get(0).end(),
        message,
        "Move the modules closer to each other, or bring "
            + (far.size() == 1 ? "a longer cord." : "longer cords."));
  }

  /** The mistake may stand in another patch, that several are like. */
  private static String name(Part part) {
    return part.song().patch().name();
  }

  private int longest() {
    return rig.cords().countByLengthCm().entrySet().stream()
        .filter(entry -> entry.getValue() > 0)
        .mapToInt(Map.Entry::getKey)
        .max()
        .orElseThrow();
  }

  /** Reports the longest cords of which there are too few; {@link CordCount} counts them all. */
  private void checkStock(Part part, List<Hop> hops) {
    TreeSet<Integer> lengths = new TreeSet<>();
    hops.forEach(hop -> lengths.add(hop.lengthCm()));
    for (int length : lengths.descendingSet()) {
      List<Hop> needed = hops.stream().filter(hop -> hop.lengthCm() >= length).toList();
      int stock =
          rig.cords().countByLengthCm().tailMap(length, true).values().stream()
              .mapToInt(Integer::intValue)
              .sum();
      if (needed.size() > stock && hops.size() <= rig.cords().total()) {
        findings.error(
            needed.get(stock).connection(),
            "the patch \"%s\" needs %s of %d cm or more, and there %s"
                .formatted(
                    name(part),
                    Quoted.count(needed.size(), "cord"),
                    length,
                    stock == 1 ? "is 1" : "are " + stock),
            "Move the modules closer to each other, or bring more long cords.");
        return;
      }
    }
  }
}
