package entracte.check;

import entracte.rig.Kind;
import entracte.rig.Module;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How many multiples a source with several sinks needs. A chain of multiples with t1, t2, ... taps
 * has t1 + t2 + ... taps, of which two go into each cord between neighbours; one takes the source.
 * So each multiple adds its taps less two to the one sink that needs none.
 */
final class Chains {
  private static final int TAPS_IN_USE = 2;

  private final List<Integer> gains = new ArrayList<>();

  Chains(List<Module> multiples) {
    for (Module module : multiples) {
      gains.add(module.kind().taps() - TAPS_IN_USE);
    }
    gains.sort(Comparator.reverseOrder());
  }

  /** Whether a module of that kind can split a signal at all. */
  static boolean splits(Kind kind) {
    return kind.taps() > TAPS_IN_USE;
  }

  int multiples() {
    return gains.size();
  }

  /** The fewest multiples that feed that many sinks, if all were free; -1 if all are too few. */
  int fewest(int sinks) {
    int missing = sinks - 1;
    int used = 0;
    while (missing > 0 && used < gains.size()) {
      missing -= gains.get(used);
      used++;
    }
    return missing > 0 ? -1 : used;
  }
}
