package entracte.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;

/**
 * For every two songs, how few moves the changeover between them has at least, in any order and any
 * plan. Two songs alone, from a bare rig whose set-up is free, cost the same forwards and
 * backwards: what is parked before the show in one direction is left plugged after it in the other.
 * So each pair is looked at once.
 */
final class PairBounds {
  private final int[][] least;

  private PairBounds(int[][] least) {
    this.least = least;
  }

  /**
   * @param nodes the steps that each pair may take; a pair cut short has a lower bound
   */
  static PairBounds of(Problem problem, long nodes, Workers workers, BooleanSupplier stop) {
    int songs = problem.songs();
    List<Callable<Void>> tasks = new ArrayList<>();
    int[][] least = new int[songs][songs];
    for (int a = 0; a < songs; a++) {
      for (int b = a + 1; b < songs; b++) {
        int one = a;
        int other = b;
        tasks.add(
            () -> {
              WindowProof proof = new WindowProof(problem.alone(one, other), new int[2], stop);
              least[one][other] = proof.prove(0, Integer.MAX_VALUE, nodes);
              least[other][one] = least[one][other];
              return null;
            });
      }
    }
    workers.all(tasks);
    return new PairBounds(least);
  }

  int[][] steps() {
    return least;
  }

  /** The sum over the steps of an order. */
  int of(int[] order) {
    int sum = 0;
    for (int k = 1; k < order.length; k++) {
      sum += least[order[k - 1]][order[k]];
    }
    return sum;
  }

  /**
   * What any order costs at least: for few songs the cheapest path; for many the cheapest tree that
   * joins all songs (Prim 1957), since a path is a tree.
   *
   * @return {@link PathOrders#NO_WAY} if no order is permitted
   */
  int leastOrder(OrderSteps permitted) {
    return least.length <= PathOrders.MOST_SONGS
        ? new PathOrders(least, permitted).least()
        : leastTree();
  }

  private int leastTree() {
    int songs = least.length;
    int[] way = new int[songs];
    boolean[] joined = new boolean[songs];
    Arrays.fill(way, Integer.MAX_VALUE);
    way[0] = 0;
    int sum = 0;
    for (int round = 0; round < songs; round++) {
      int next = -1;
      for (int song = 0; song < songs; song++) {
        if (!joined[song] && (next < 0 || way[song] < way[next])) {
          next = song;
        }
      }
      joined[next] = true;
      sum += way[next];
      for (int song = 0; song < songs; song++) {
        way[song] = Math.min(way[song], least[next][song]);
      }
    }
    return sum;
  }
}
