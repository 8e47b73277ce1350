package entracte.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The pairs of jacks that a casting ever joins, and where a cord may be in each of them. */
final class BagPlaces {
  /** The uses of each place, in order. */
  final List<List<Integer>> uses = new ArrayList<>();

  private final CordLedger cords;
  private final RigIndex rig;

  /** By place and column, the use that a cord there serves, or served last, or will first. */
  private final int[][] around;

  /** The places that share a jack with each, itself among them. */
  private final int[][] sharing;

  BagPlaces(CordLedger cords, RigIndex rig) {
    this.cords = cords;
    this.rig = rig;
    Map<Long, Integer> placeOf = new HashMap<>();
    for (int use = 0; use < cords.columnOf.length; use++) {
      if (cords.sourceOf[use] != CordLedger.NOTHING) {
        int place = placeOf.computeIfAbsent(key(use), k -> placeOf.size());
        if (place == uses.size()) {
          uses.add(new ArrayList<>());
        }
        uses.get(place).add(use);
      }
    }
    around = new int[count()][cords.columns];
    sharing = new int[count()][];
    for (int place = 0; place < count(); place++) {
      int at = place;
      Arrays.setAll(around[place], column -> findUseAround(at, column));
      sharing[place] = IntStream.range(0, count()).filter(other -> shareJack(at, other)).toArray();
    }
  }

  private long key(int use) {
    long low = Math.min(cords.sourceOf[use], cords.sinkOf[use]);
    return low << 32 | Math.max(cords.sourceOf[use], cords.sinkOf[use]);
  }

  int count() {
    return uses.size();
  }

  /** The use a cord in {@code place} serves, or served last, or will serve first. */
  int useAround(int place, int column) {
    return around[place][column];
  }

  /** The places that share a jack with {@code place}, itself among them. */
  int[] sharing(int place) {
    return sharing[place];
  }

  private int findUseAround(int place, int column) {
    int found = uses.get(place).get(0);
    for (int use : uses.get(place)) {
      if (cords.columnOf[use] <= column) {
        found = use;
      }
    }
    return found;
  }

  boolean isRequired(int place, int column) {
    return cords.columnOf[useAround(place, column)] == column;
  }

  /** Whether a cord may be in {@code place} in a column: required there, or parked. */
  boolean mayHold(int place, int column) {
    if (isRequired(place, column)) {
      return true;
    }
    int use = useAround(place, column);
    return column > 0
        && cords.use(cords.sourceOf[use], column) < 0
        && cords.use(cords.sinkOf[use], column) < 0
        && cords.mayWait(cords.sinkOf[use], column);
  }

  boolean shareJack(int place, int other) {
    int a = uses.get(place).get(0);
    int b = uses.get(other).get(0);
    return cords.sourceOf[a] == cords.sourceOf[b]
        || cords.sourceOf[a] == cords.sinkOf[b]
        || cords.sinkOf[a] == cords.sourceOf[b]
        || cords.sinkOf[a] == cords.sinkOf[b];
  }

  /** The socket that two places share. */
  int shared(int place, int other) {
    int a = uses.get(place).get(0);
    int b = uses.get(other).get(0);
    int source = cords.sourceOf[a];
    boolean isSource = source == cords.sourceOf[b] || source == cords.sinkOf[b];
    return isSource ? source : cords.sinkOf[a];
  }

  /** The shortest length in stock that reaches. */
  int lengthNeeded(int place, Problem problem) {
    int use = uses.get(place).get(0);
    int source = rig.moduleOfSocket[cords.sourceOf[use]];
    return problem.lengthNeeded[source][rig.moduleOfSocket[cords.sinkOf[use]]];
  }

  /** What it costs to put a cord there. */
  long add(int place, Prices prices) {
    int use = uses.get(place).get(0);
    return prices.add(cords.sourceOf[use], cords.sinkOf[use]);
  }

  /** What it costs to take a cord away. */
  long remove(int place, Prices prices) {
    int use = uses.get(place).get(0);
    return prices.remove(cords.sourceOf[use], cords.sinkOf[use]);
  }

  /** Whether two cords may not wait in the two places at once. */
  boolean exclude(int place, int other, int column) {
    int a = cords.sinkOf[useAround(place, column)];
    int b = cords.sinkOf[useAround(other, column)];
    boolean feedOneMultiple =
        rig.tapSocket[a] && rig.tapSocket[b] && rig.moduleOfSocket[a] == rig.moduleOfSocket[b];
    return feedOneMultiple || shareJack(place, other);
  }
}
