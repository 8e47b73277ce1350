package entracte.plan;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The least moves for plugging a casting with a limited bag, as a minimum-cost flow: each cord is a
 * unit that travels through the columns, from place to place or through the bag. To stay costs
 * nothing, to come or go two moves, to move on to a place that shares a jack two as well. A
 * required place has a reward that no detour outweighs. The flow knows nothing of cords that may
 * not wait at once, nor of lengths; so its cost is a lower bound, and where it breaks neither rule
 * it is the truth. {@link BagProof} forbids what clashes.
 */
final class BagFlow {
  static final long EMPTY_BAG = Long.MAX_VALUE / 8;

  private static final long REWARD = 1L << 44;

  private final Problem problem;
  private final CordLedger cords;
  private final BagPlaces places;
  private final int[][] in;
  private final int[][] placeArc;
  private final int[][] stayArc;
  private final Map<BagBan, Integer> shiftArc;
  private final int[] bag;
  private MinCostFlow flow;
  private long cost;

  BagFlow(Problem problem, CordLedger cords, BagPlaces places) {
    this.problem = problem;
    this.cords = cords;
    this.places = places;
    in = new int[places.count()][cords.columns];
    placeArc = new int[places.count()][cords.columns];
    stayArc = new int[places.count()][cords.columns];
    Arrays.stream(stayArc).forEach(row -> Arrays.fill(row, BagRule.NONE));
    shiftArc = new LinkedHashMap<>();
    bag = new int[cords.columns];
    solve();
  }

  private BagFlow(BagFlow other, BagBan ban) {
    problem = other.problem;
    cords = other.cords;
    places = other.places;
    in = other.in;
    placeArc = other.placeArc;
    stayArc = other.stayArc;
    shiftArc = other.shiftArc;
    bag = other.bag;
    flow = other.flow.copy();
    long rise = flow.shut(arc(ban));
    cost = known(rise == MinCostFlow.NO_WAY ? REWARD : other.cost + rise);
  }

  /** The least that is left if a cord may not do that, either; what this flow is, it stays. */
  BagFlow without(BagBan ban) {
    return new BagFlow(this, ban);
  }

  private int arc(BagBan ban) {
    if (ban.next() == BagRule.NONE) {
      return placeArc[ban.place()][ban.column()];
    }
    return ban.next() == ban.place() ? stayArc[ban.place()][ban.column()] : shiftArc.get(ban);
  }

  /** A place that is not served outweighs all that moves could cost. */
  private static long known(long served) {
    return served >= REWARD / 2 ? EMPTY_BAG : served;
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
    cost = known(sent + required * REWARD);
  }

  private int numberNodes() {
    int next = 1;
    for (int column = 0; column < cords.columns; column++) {
      bag[column] = next++;
      for (int place = 0; place < places.count(); place++) {
        if (places.mayHold(place, column)) {
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
    for (int other : places.sharing(place)) {
      if (in[other][column + 1] == 0) {
        continue;
      }
      if (other == place) {
        stayArc[place][column] = flow.arc(out, in[place][column + 1], 1, 0);
      } else {
        long moved =
            places.remove(place, problem.prices)
                + places.add(other, problem.prices)
                - problem.prices.stay(places.shared(place, other));
        long price = moved * problem.weights.at(column + 1);
        int arc = flow.arc(out, in[other][column + 1], 1, price);
        shiftArc.put(new BagBan(place, column, other), arc);
      }
    }
  }

  /** The weight of the plugging; {@link #EMPTY_BAG} if a song finds too few cords. */
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

  /** The shifts taken. */
  List<BagBan> shifts() {
    return shiftArc.keySet().stream().filter(s -> flow.flow(shiftArc.get(s)) > 0).toList();
  }
}
