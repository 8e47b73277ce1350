package entracte.plan;

import java.util.Arrays;

/**
 * The order of songs whose steps cost least, by dynamic programming over the sets of songs placed
 * (Bellman 1962; Held and Karp 1962), here for a path whose two ends are free and whose steps may
 * be forbidden. Exact. Time: songs squared times two to the number of songs; memory: songs times
 * two to that number.
 */
final class PathOrders {
  static final int MOST_SONGS = 17;
  static final int NO_WAY = Integer.MAX_VALUE / 2;

  private final int[][] cost;
  private final OrderSteps steps;
  private final int songs;

  /** The least cost of placing the rest, by the set placed and the song placed last. */
  private final int[] rest;

  /**
   * @param cost of the step from one song to another
   */
  PathOrders(int[][] cost, OrderSteps steps) {
    if (cost.length > MOST_SONGS) {
      throw new IllegalArgumentException("too many songs for an exact order: " + cost.length);
    }
    this.cost = cost;
    this.steps = steps;
    songs = cost.length;
    rest = new int[songs << songs];
    int full = (1 << songs) - 1;
    for (int placed = full; placed > 0; placed--) {
      for (int last = 0; last < songs; last++) {
        if ((placed >> last & 1) != 0) {
          rest[placed * songs + last] = placed == full ? 0 : best(placed, last);
        }
      }
    }
  }

  private int best(int placed, int last) {
    int best = NO_WAY;
    for (int next = 0; next < songs; next++) {
      if ((placed >> next & 1) == 0) {
        int all = cost[last][next] + rest[(placed | 1 << next) * songs + next];
        if (all < best && steps.mayFollow(placed, last, next)) {
          best = all;
        }
      }
    }
    return best;
  }

  /** The least cost of placing all songs not in {@code placed} after {@code last}. */
  int rest(int placed, int last) {
    return rest[placed * songs + last];
  }

  /** The least cost of an order; {@link #NO_WAY} if none is permitted. */
  int least() {
    int best = NO_WAY;
    for (int first = 0; first < songs; first++) {
      if (steps.mayFollow(0, 0, first)) {
        best = Math.min(best, rest(1 << first, first));
      }
    }
    return best;
  }

  /** An order of least cost; the first in the order of the songs' numbers. */
  int[] order() {
    int[] order = new int[songs];
    int placed = 0;
    int last = 0;
    int left = least();
    if (left >= NO_WAY) {
      throw new IllegalStateException("no order is permitted");
    }
    for (int count = 0; count < songs; count++) {
      int next = next(placed, last, count, left);
      left = rest(placed | 1 << next, next);
      placed |= 1 << next;
      last = next;
      order[count] = next;
    }
    return order;
  }

  private int next(int placed, int last, int count, int left) {
    for (int next = 0; next < songs; next++) {
      if ((placed >> next & 1) == 0 && steps.mayFollow(placed, last, next)) {
        int step = count == 0 ? 0 : cost[last][next];
        if (step + rest(placed | 1 << next, next) == left) {
          return next;
        }
      }
    }
    throw new IllegalStateException("no step from " + Arrays.toString(cost[last]));
  }
}
