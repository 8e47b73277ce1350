package entracte.plan;

import java.util.Arrays;

/**
 * Minimum-cost flow by successive shortest paths with node potentials (Edmonds and Karp 1972). Arcs
 * may have negative costs but must lead from lower to higher nodes. Units are sent as long as they
 * lower the cost. The result is whole numbers and the least possible cost. Time: units times arcs
 * times log nodes.
 */
final class MinCostFlow {
  private static final long UNREACHED = Long.MAX_VALUE / 4;

  private final int nodes;
  private final int[] firstArc;
  private int[] nextArc = new int[64];
  private int[] head = new int[64];
  private int[] room = new int[64];
  private long[] cost = new long[64];
  private int arcs;
  private final long[] potential;
  private final long[] distance;
  private final int[] arrival;
  private final NearestFirst queue;

  MinCostFlow(int nodes) {
    this.nodes = nodes;
    firstArc = new int[nodes];
    Arrays.fill(firstArc, -1);
    potential = new long[nodes];
    distance = new long[nodes];
    arrival = new int[nodes];
    queue = new NearestFirst(distance);
  }

  /** Adds an arc and returns its number. */
  int arc(int from, int to, int capacity, long price) {
    if (from >= to) {
      throw new IllegalArgumentException("arcs lead upward: " + from + " to " + to);
    }
    half(from, to, capacity, price);
    half(to, from, 0, -price);
    return arcs - 2;
  }

  private void half(int from, int to, int capacity, long price) {
    if (arcs == head.length) {
      nextArc = Arrays.copyOf(nextArc, 2 * arcs);
      head = Arrays.copyOf(head, 2 * arcs);
      room = Arrays.copyOf(room, 2 * arcs);
      cost = Arrays.copyOf(cost, 2 * arcs);
    }
    head[arcs] = to;
    room[arcs] = capacity;
    cost[arcs] = price;
    nextArc[arcs] = firstArc[from];
    firstArc[from] = arcs++;
  }

  /** The units on an arc. */
  int flow(int arc) {
    return room[arc ^ 1];
  }

  /** Sends up to {@code units} from the first node to the last; returns the least cost. */
  long send(int units) {
    int sink = nodes - 1;
    long total = 0;
    findPotentials();
    for (int unit = 0; unit < units; unit++) {
      findDistances();
      if (distance[sink] >= UNREACHED) {
        return total;
      }
      for (int node = 0; node < nodes; node++) {
        potential[node] += Math.min(distance[node], distance[sink]);
      }
      long price = potential[sink] - potential[0];
      if (price >= 0) {
        return total;
      }
      total += price;
      for (int node = sink; node != 0; node = head[arrival[node] ^ 1]) {
        room[arrival[node]]--;
        room[arrival[node] ^ 1]++;
      }
    }
    return total;
  }

  /** Shortest distances by one pass upward: there is no flow yet, and no arc leads down. */
  private void findPotentials() {
    Arrays.fill(potential, UNREACHED);
    potential[0] = 0;
    for (int node = 0; node < nodes; node++) {
      for (int arc = firstArc[node]; arc >= 0 && potential[node] < UNREACHED; arc = nextArc[arc]) {
        if (room[arc] > 0) {
          int to = head[arc];
          potential[to] = Math.min(potential[to], potential[node] + cost[arc]);
        }
      }
    }
  }

  /**
   * Dijkstra over the arcs with room, by costs that the potentials make non-negative. It stops at
   * the last node: what is farther counts as far.
   */
  private void findDistances() {
    Arrays.fill(distance, UNREACHED);
    distance[0] = 0;
    queue.clear();
    queue.nearer(0);
    while (!queue.isEmpty()) {
      int node = queue.poll();
      if (node == nodes - 1) {
        return;
      }
      for (int arc = firstArc[node]; arc >= 0; arc = nextArc[arc]) {
        int to = head[arc];
        if (room[arc] == 0 || potential[to] >= UNREACHED) {
          continue;
        }
        long far = distance[node] + cost[arc] + potential[node] - potential[to];
        if (far < distance[to]) {
          distance[to] = far;
          arrival[to] = arc;
          queue.nearer(to);
        }
      }
    }
  }
}
