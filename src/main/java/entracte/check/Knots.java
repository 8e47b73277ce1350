package entracte.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * The strongly connected components of a directed graph: sets of nodes of which each reaches each.
 * Found by Tarjan's search (1972), written without recursion, since a patch may be long. Time and
 * memory are linear in nodes and links.
 */
final class Knots {
  private static final int UNSEEN = -1;

  private final List<List<Integer>> next;
  private final int[] index;
  private final int[] low;
  private final int[] position;
  private final boolean[] open;
  private final Deque<Integer> path = new ArrayDeque<>();
  private final Deque<Integer> pending = new ArrayDeque<>();
  private final List<List<Integer>> found = new ArrayList<>();
  private int count;

  private Knots(List<List<Integer>> next) {
    this.next = next;
    this.index = new int[next.size()];
    this.low = new int[next.size()];
    this.position = new int[next.size()];
    this.open = new boolean[next.size()];
    Arrays.fill(index, UNSEEN);
  }

  /** The components of the graph, each with its nodes in rising order. */
  static List<List<Integer>> of(List<List<Integer>> next) {
    Knots knots = new Knots(next);
    for (int node = 0; node < next.size(); node++) {
      if (knots.index[node] == UNSEEN) {
        knots.search(node);
      }
    }
    return knots.found;
  }

  private void search(int root) {
    enter(root);
    while (!path.isEmpty()) {
      int node = path.peek();
      if (position[node] < next.get(node).size()) {
        int to = next.get(node).get(position[node]++);
        if (index[to] == UNSEEN) {
          enter(to);
        } else if (open[to]) {
          low[node] = Math.min(low[node], index[to]);
        }
      } else {
        leave(path.pop());
      }
    }
  }

  private void enter(int node) {
    index[node] = count;
    low[node] = count;
    count++;
    open[node] = true;
    path.push(node);
    pending.push(node);
  }

  private void leave(int node) {
    if (low[node] == index[node]) {
      List<Integer> knot = new ArrayList<>();
      int member;
      do {
        member = pending.pop();
        open[member] = false;
        knot.add(member);
      } while (member != node);
      knot.sort(null);
      found.add(knot);
    }
    if (!path.isEmpty()) {
      low[path.peek()] = Math.min(low[path.peek()], low[node]);
    }
  }
}
