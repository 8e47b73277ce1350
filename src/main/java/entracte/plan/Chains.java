package entracte.plan;

import entracte.check.Part;
import entracte.rig.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Finds which multiples can split the fan-outs of a song. A source with n sinks needs a chain with
 * n free taps; a chain of m multiples spends one tap on the source and two on each link. The
 * smallest chain is the one of fewest multiples; where the rig has several sizes, every mixture of
 * that many that has room enough is a choice of its own. If the smallest chains of all nets
 * together ask for more multiples of a size than there are, the planner takes the least number of
 * multiples in all that the rig can give.
 */
final class Chains {
  /** More choices than any real rig has; beyond, the search would drown. */
  private static final int MOST_CHOICES = 64;

  private final TreeMap<Kind, Integer> stock = new TreeMap<>(Comparator.comparing(Kind::name));

  Chains(RigIndex rig) {
    rig.modules.stream()
        .map(entracte.rig.Module::kind)
        .filter(k -> k.taps() > 0)
        .forEach(k -> stock.merge(k, 1, Integer::sum));
  }

  /** The choices for a song: for each, the chain of each net. Empty if no choice serves. */
  List<List<List<Kind>>> choicesFor(Part part) {
    List<Integer> sinks = part.nets().stream().map(n -> n.sinks().size()).toList();
    int split = (int) sinks.stream().filter(n -> n > 1).count();
    int all = stock.values().stream().mapToInt(Integer::intValue).sum();
    for (int multiples = split; multiples <= all; multiples++) {
      List<List<List<Kind>>> found = new ArrayList<>();
      spread(sinks, 0, multiples, new ArrayList<>(), new TreeMap<>(stock), found);
      if (!found.isEmpty()) {
        return found;
      }
    }
    return split == 0 ? List.of(sinks.stream().map(n -> List.<Kind>of()).toList()) : List.of();
  }

  private void spread(
      List<Integer> sinks,
      int net,
      int left,
      List<List<Kind>> soFar,
      Map<Kind, Integer> free,
      List<List<List<Kind>>> found) {
    if (found.size() >= MOST_CHOICES) {
      return;
    }
    if (net == sinks.size()) {
      if (left == 0) {
        found.add(List.copyOf(soFar));
      }
      return;
    }
    if (sinks.get(net) < 2) {
      soFar.add(List.of());
      spread(sinks, net + 1, left, soFar, free, found);
      soFar.remove(soFar.size() - 1);
      return;
    }
    int later = (int) sinks.subList(net + 1, sinks.size()).stream().filter(n -> n > 1).count();
    for (int length = 1; length <= left - later; length++) {
      for (List<Kind> chain : chains(length, sinks.get(net), free)) {
        chain.forEach(k -> free.merge(k, -1, Integer::sum));
        soFar.add(chain);
        spread(sinks, net + 1, left - length, soFar, free, found);
        soFar.remove(soFar.size() - 1);
        chain.forEach(k -> free.merge(k, 1, Integer::sum));
      }
    }
  }

  /** The ordered chains of that many multiples that have room for the sinks, and need them all. */
  private List<List<Kind>> chains(int length, int sinks, Map<Kind, Integer> free) {
    List<List<Kind>> found = new ArrayList<>();
    extend(length, sinks, new ArrayList<>(), free, found);
    return found;
  }

  private void extend(
      int left, int sinks, List<Kind> soFar, Map<Kind, Integer> free, List<List<Kind>> found) {
    if (left == 0) {
      if (room(soFar) >= sinks) {
        found.add(List.copyOf(soFar));
      }
      return;
    }
    for (Kind kind : free.keySet()) {
      long used = soFar.stream().filter(kind::equals).count();
      if (used < free.get(kind)) {
        soFar.add(kind);
        extend(left - 1, sinks, soFar, free, found);
        soFar.remove(soFar.size() - 1);
      }
    }
  }

  private static int room(List<Kind> chain) {
    return chain.stream().mapToInt(Kind::taps).sum() - 1 - 2 * (chain.size() - 1);
  }
}
