package entracte.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The cheapest castings that annealing came by, with an endless bag, below a limit. Which of them
 * is best can be told only when each is finished with the cords that there are.
 */
final class Sightings {
  /** A casting and what it costs with an endless bag. */
  record Sighting(long cost, Casting casting) {}

  private final Map<List<Integer>, Sighting> seen = new HashMap<>();
  private final int most;
  private long below;

  /** Keeps {@code most} castings that cost less than {@code below}. */
  Sightings(int most, long below) {
    this.most = most;
    this.below = below;
  }

  /** Takes note of a casting, of which a copy is made, if it is new and cheap. */
  void see(long cost, Casting casting) {
    if (cost >= below) {
      return;
    }
    List<Integer> key = key(casting);
    Sighting before = seen.get(key);
    if (before == null || cost < before.cost()) {
      seen.put(key, new Sighting(cost, casting.copy()));
      if (seen.size() >= 2 * most) {
        forgetTheDear();
      }
    }
  }

  /** What tells castings apart; of those that differ in channels shut alone one is enough. */
  static List<Integer> key(Casting casting) {
    List<Integer> key = new ArrayList<>();
    for (int s = 0; s < casting.shape.length; s++) {
      key.add(casting.shape[s]);
      for (int module : casting.module[s]) {
        key.add(module);
      }
      for (int strip : casting.strip[s]) {
        key.add(strip);
      }
    }
    return key;
  }

  private void forgetTheDear() {
    List<Sighting> cheapest = cheapest();
    below = cheapest.get(most - 1).cost();
    seen.clear();
    cheapest.forEach(sighting -> seen.put(key(sighting.casting()), sighting));
  }

  /** Up to so many as are kept, the cheapest first. */
  List<Sighting> cheapest() {
    Comparator<Sighting> byCost = Comparator.comparingLong(Sighting::cost);
    Comparator<Sighting> byKey =
        (a, b) -> Arrays.compare(figures(a.casting()), figures(b.casting()));
    return seen.values().stream().sorted(byCost.thenComparing(byKey)).limit(most).toList();
  }

  private static int[] figures(Casting casting) {
    return key(casting).stream().mapToInt(Integer::intValue).toArray();
  }
}
