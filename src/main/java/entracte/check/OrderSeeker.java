package entracte.check;

import java.util.BitSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Looks for an order that all rules permit, by depth-first search in the order of the set; what led
 * nowhere once (the same songs placed, the same one last) is not tried again. Exact while its steps
 * last; the rules of a musician need few of them.
 */
final class OrderSeeker {
  private static final int MOST_STEPS = 100_000;

  private final PermittedOrders permitted;
  private final BitSet placed = new BitSet();
  private final Set<BitSet> deadEnds = new HashSet<>();
  private final int[] order;
  private int steps;

  OrderSeeker(PermittedOrders permitted) {
    this.permitted = permitted;
    order = new int[permitted.songs()];
  }

  /** A permitted order, if one was found. */
  Optional<int[]> find() {
    return extend(0) ? Optional.of(order.clone()) : Optional.empty();
  }

  /** Whether the search ended for want of steps, so that finding none proves nothing. */
  boolean gaveUp() {
    return steps > MOST_STEPS;
  }

  private boolean extend(int count) {
    if (count == order.length) {
      return true;
    }
    int last = count == 0 ? 0 : order[count - 1];
    if (++steps > MOST_STEPS || deadEnds.contains(state(last))) {
      return false;
    }
    for (int next = 0; next < order.length; next++) {
      if (!placed.get(next) && permitted.mayFollow(placed::get, count, last, next)) {
        placed.set(next);
        order[count] = next;
        if (extend(count + 1)) {
          return true;
        }
        placed.clear(next);
      }
    }
    deadEnds.add(state(last));
    return false;
  }

  private BitSet state(int last) {
    BitSet state = (BitSet) placed.clone();
    state.set(order.length + last);
    return state;
  }
}
