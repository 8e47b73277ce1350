package entracte.check;

import java.util.Arrays;
import java.util.List;

/**
 * A largest matching of left things to right things, by augmenting paths: a matching is largest if
 * no path from an unmatched left thing to a free right one alternates (Berge 1957; the search is
 * Kuhn's, 1955). Time is the number of left things times the number of choices; memory is linear.
 */
final class Matching {
  static final int NONE = -1;

  private final List<int[]> options;
  private final int[] chosen;
  private final int[] taker;
  private final boolean[] visited;

  /**
   * @param options for each left thing, the right ones that it may take
   * @param rights how many right things there are
   */
  Matching(List<int[]> options, int rights) {
    this.options = options;
    this.chosen = new int[options.size()];
    this.taker = new int[rights];
    this.visited = new boolean[rights];
    Arrays.fill(chosen, NONE);
    Arrays.fill(taker, NONE);
    for (int left = 0; left < chosen.length; left++) {
      Arrays.fill(visited, false);
      augment(left);
    }
  }

  private boolean augment(int left) {
    for (int right : options.get(left)) {
      if (!visited[right]) {
        visited[right] = true;
        if (taker[right] == NONE || augment(taker[right])) {
          taker[right] = left;
          chosen[left] = right;
          return true;
        }
      }
    }
    return false;
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
}
