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
  private static final int MOST = 80;

  /** A casting and what it costs with an endless bag. */
  record Sighting(long cost, Casting casting) {}

  private final Map<List<Integer>, Sighting> seen = new HashMap<>();
  private long below;

  Sightings(long below) {
    this.below = below;
  }

  /** Takes note of a casting, of which a copy is made, if it is new and cheap. */
  void see(long cost, Casting casting) {
    if (cost >= below) {
      return;
    }
    List<Integer> key = key(casting);
    if (!seen.containsKey(key)) {
      seen.put(key, new Sighting(cost, casting.copy()));
      if (seen.size() >= 2 * MOST) {
        forgetTheDear();
      }
    }
  }

  /** What tells castings apart; which channels are shut as well. */
  private static List<Integer> key(Casting casting) {
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
    for (boolean[] shut : casting.shut) {
      key.add(Arrays.hashCode(shut));
    }
    return key;
  }

  private void forgetTheDear() {
    List<Sighting> cheapest = cheapest();
    below = cheapest.get(MOST - 1).cost();
    seen.clear();
    cheapest.forEach(sighting -> seen.put(key(sighting.casting()), sighting));
  }

  /** Up to so many as are kept, the cheapest first. */
  List<Sighting> cheapest() {
    Comparator<Sighting> byCost = Comparator.comparingLong(Sighting::cost);
    Comparator<Sighting> byKey =
        (a, b) -> Arrays.compare(figures(a.casting()), figures(b.casting()));
    return seen.values().stream().sorted(byCost.thenComparing(byKey)).limit(MOST).toList();
  }

  private static int[] figures(Casting casting) {
    return key(casting).stream().mapToInt(Integer::intValue).toArray();
  }
}
