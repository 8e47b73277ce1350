package entracte.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * The least moves for plugging a casting with a limited bag, as a minimum-cost flow: each cord is a
 * unit that travels through the columns, from place to place or through the bag. To stay costs
 * nothing, to come or go two moves, to move on to a place that shares a jack two as well. A
 * required place has a reward that no detour outweighs. The flow knows nothing of cords that may
 * not wait at once, nor of lengths; so its cost is a lower bound, and where it breaks neither rule
 * it is the truth. {@link BagProof} forbids what clashes.
 */
final class BagFlow {
  private static final long REWARD = 1L << 44;

  private final Set<BagBan> bans;

  private final Problem problem;
  private final CordLedger cords;
  private final BagPlaces places;
  private final int[][] in;
  private final int[][] placeArc;
  private final int[][] stayArc;
  private final List<int[]> shiftArcs = new ArrayList<>();
  private final int[] bag;
  private MinCostFlow flow;
  private long cost;

  BagFlow(Problem problem, CordLedger cords, BagPlaces places, Set<BagBan> bans) {
    this.problem = problem;
    this.cords = cords;
    this.places = places;
    this.bans = bans;
    in = new int[places.count()][cords.columns];
    placeArc = new int[places.count()][cords.columns];
    stayArc = new int[places.count()][cords.columns];
    Arrays.stream(stayArc).forEach(row -> Arrays.fill(row, BagRule.NONE));
    bag = new int[cords.columns];
    solve();
  }

  private boolean may(int place, int column) {
    return !bans.contains(BagBan.from(place, column)) && places.mayHold(place, column);
  }

  private void solve() {
    int nodes = numberNodes();
    flow = new MinCostFlow(nodes);
    int required = 0;
    int stock = problem.rig.rig.cords().total();
    flow.arc(0, bag[0], Math.max(0, stock - problem.startCords.length), 0);
    for (int column = 0; column < cords.columns; column++) {
      for (int place = 0; place < places.count(); place++) {
        if (in[place][column] > 0) {
          boolean needed = places.isRequired(place, column);
          required += needed ? 1 : 0;
          int node = in[place][column];
          placeArc[place][column] = flow.arc(node, node + 1, 1, needed ? -REWARD : 0);
          if (column == 0) {
            flow.arc(0, node, 1, 0);
          }
        }
      }
      leave(column, nodes - 1);
    }
    long sent = flow.send(stock);
    long served = sent + required * REWARD;
    cost = served >= REWARD / 2 ? BagRule.EMPTY_BAG : served;
  }

  private int numberNodes() {
    int next = 1;
    for (int column = 0; column < cords.columns; column++) {
      bag[column] = next++;
      for (int place = 0; place < places.count(); place++) {
        if (may(place, column)) {
          in[place][column] = next;
          next += 2;
        }
      }
    }
    return next + 1;
  }

  private void leave(int column, int sink) {
    boolean last = column == cords.columns - 1;
    int stock = problem.rig.rig.cords().total();
    flow.arc(bag[column], last ? sink : bag[column + 1], stock, 0);
    for (int place = 0; place < places.count(); place++) {
      if (in[place][column] == 0) {
        continue;
      }
      if (column > 0) {
        long price = places.add(place, problem.prices) * problem.weights.at(column);
        flow.arc(bag[column], in[place][column], 1, price);
      }
      int out = in[place][column] + 1;
      if (last) {
        flow.arc(out, sink, 1, 0);
      } else {
        long price = places.remove(place, problem.prices) * problem.weights.at(column + 1);
        flow.arc(out, bag[column + 1], 1, price);
        moveOn(place, column);
      }
    }
  }

  private void moveOn(int place, int column) {
    int out = in[place][column] + 1;
    for (int other = 0; other < places.count(); other++) {
      boolean leads =
          in[other][column + 1] > 0 && (other == place || places.shareJack(place, other));
      if (leads && !bans.contains(new BagBan(place, column, other))) {
        if (other == place) {
          stayArc[place][column] = flow.arc(out, in[place][column + 1], 1, 0);
        } else {
          long moved =
              places.remove(place, problem.prices)
                  + places.add(other, problem.prices)
                  - problem.prices.stay(places.shared(place, other));
          long price = moved * problem.weights.at(column + 1);
          int arc = flow.arc(out, in[other][column + 1], 1, price);
          shiftArcs.add(new int[] {arc, place, column, other});
        }
      }
    }
  }

  /** The weight of the plugging; {@link BagRule#EMPTY_BAG} if a song finds too few cords. */
  long cost() {
    return cost;
  }

  boolean holds(int place, int column) {
    return in[place][column] > 0 && flow.flow(placeArc[place][column]) > 0;
  }

  /** Whether the cord in a place is still the same in the next column. */
  boolean stays(int place, int column) {
    return holds(place, column)
        && column + 1 < cords.columns
        && in[place][column + 1] > 0
        && stayArc[place][column] >= 0
        && flow.flow(stayArc[place][column]) > 0;
  }

  /** The shifts taken, each as place, column, next place. */
  List<int[]> shifts() {
    return shiftArcs.stream()
        .filter(arc -> flow.flow(arc[0]) > 0)
        .map(arc -> new int[] {arc[1], arc[2], arc[3]})
        .toList();
  }
}
