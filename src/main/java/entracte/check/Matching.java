package entracte.check;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * A largest matching of left things to right things, by augmenting paths: a matching is largest if
 * no path from an unmatched left thing to a free right one alternates (Berge 1957; the search is
 * Kuhn's, 1955, breadth first). Time is at most the number of left things times the number of
 * choices; memory is linear.
 */
final class Matching {
  static final int NONE = -1;

  private final List<int[]> options;
  private final int[] chosen;
  private final int[] taker;
  private final int[] reachedFrom;

  /**
   * @param options for each left thing, the right ones that it may take
   * @param rights how many right things there are
   */
  Matching(List<int[]> options, int rights) {
    this.options = options;
    this.chosen = new int[options.size()];
    this.taker = new int[rights];
    this.reachedFrom = new int[rights];
    Arrays.fill(chosen, NONE);
    Arrays.fill(taker, NONE);
    for (int left = 0; left < chosen.length; left++) {
      int free = freeFrom(left);
      while (free != NONE) {
        free = take(free);
      }
    }
  }

  /** A free right thing at the end of an alternating path from {@code start}. */
  private int freeFrom(int start) {
    Arrays.fill(reachedFrom, NONE);
    Deque<Integer> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      int left = open.remove();
      for (int right : options.get(left)) {
        if (reachedFrom[right] == NONE) {
          reachedFrom[right] = left;
          if (taker[right] == NONE) {
            return right;
          }
          open.add(taker[right]);
        }
      }
    }
    return NONE;
  }

  /** Gives {@code right} to the left thing that reached it; what that one had becomes free. */
  private int take(int right) {
    int left = reachedFrom[right];
    int given = chosen[left];
    taker[right] = left;
    chosen[left] = right;
    return given;
  }

  /** How many left things have found a right one. */
  int size() {
    return (int) Arrays.stream(chosen).filter(right -> right != NONE).count();
  }

  boolean complete() {
    return size() == chosen.length;
  }

  /** What {@code left} takes; {@link #NONE} if nothing is left for it. */
  int chosen(int left) {
    return chosen[left];
  }

  /**
   * Left things that together have fewer options than they are: the first unmatched one, and those
   * that hold what it could take, directly or in turn. Empty if the matching is complete.
   */
  BitSet tooMany() {
    BitSet lefts = new BitSet();
    for (int left = 0; left < chosen.length; left++) {
      if (chosen[left] == NONE) {
        freeFrom(left);
        lefts.set(left);
        for (int right = 0; right < taker.length; right++) {
          if (reachedFrom[right] != NONE) {
            lefts.set(taker[right]);
          }
        }
        return lefts;
      }
    }
    return lefts;
  }
}
