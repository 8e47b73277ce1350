package entracte.plan;

import java.util.Arrays;

/**
 * Minimum-cost flow by successive shortest paths with node potentials (Edmonds and Karp 1972). Arcs
 * may have negative costs but must lead from lower to higher nodes. Units are sent as long as they
 * lower the cost. The result is whole numbers and the least possible cost. Time: units times arcs
 * times log nodes.
 */
final class MinCostFlow {
  /** What {@link #shut} says where nothing can flow around. */
  static final long NO_WAY = Long.MAX_VALUE / 8;

  private static final long UNREACHED = Long.MAX_VALUE / 4;

  private final int nodes;
  private final int[] firstArc;
  private int[] nextArc = new int[64];
  private int[] head = new int[64];
  private int[] room = new int[64];
  private long[] cost = new long[64];
  private int arcs;
  private int unsent;
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

  /** A copy of a network that gets no more arcs, to be used by the same thread only. */
  private MinCostFlow(MinCostFlow other) {
    nodes = other.nodes;
    firstArc = other.firstArc;
    nextArc = other.nextArc;
    head = other.head;
    cost = other.cost;
    arcs = other.arcs;
    unsent = other.unsent;
    distance = other.distance;
    arrival = other.arrival;
    queue = other.queue;
    room = other.room.clone();
    potential = other.potential.clone();
  }

  /** The same flow in the same network; what is shut in one is not shut in the other. */
  MinCostFlow copy() {
    return new MinCostFlow(this);
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
    unsent = units;
    findPotentials();
    return sendOn();
  }

  /** Sends what is left to send as long as that lowers the cost; returns by how much, negative. */
  private long sendOn() {
    int sink = nodes - 1;
    long total = 0;
    for (; unsent > 0; unsent--) {
      long price = findWay(0, sink);
      if (price >= 0) {
        return total;
      }
      total += price;
      push(0, sink);
    }
    return total;
  }

  /**
   * Takes an arc away after {@link #send}; what was on it flows around it, and what it made room
   * for is sent.
   *
   * @return by how much the least cost rises, or {@link #NO_WAY}, and then the flow is broken
   */
  long shut(int arc) {
    int from = head[arc ^ 1];
    int to = head[arc];
    int units = room[arc ^ 1];
    room[arc] = 0;
    room[arc ^ 1] = 0;
    long rise = 0;
    for (int unit = 0; unit < units; unit++) {
      long price = findWay(from, to);
      if (price == NO_WAY) {
        return NO_WAY;
      }
      rise += price - cost[arc];
      push(from, to);
    }
    return rise + sendOn();
  }

  /** What the cheapest way costs, if there is one. */
  private long findWay(int from, int to) {
    findDistances(from, to);
    if (distance[to] >= UNREACHED) {
      return NO_WAY;
    }
    for (int node = 0; node < nodes; node++) {
      potential[node] += Math.min(distance[node], distance[to]);
    }
    return potential[to] - potential[from];
  }

  private void push(int from, int to) {
    for (int node = to; node != from; node = head[arrival[node] ^ 1]) {
      room[arrival[node]]--;
      room[arrival[node] ^ 1]++;
    }
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
   * the node asked for: what is farther counts as far.
   */
  private void findDistances(int from, int last) {
    Arrays.fill(distance, UNREACHED);
    distance[from] = 0;
    queue.clear();
    queue.nearer(from);
    while (!queue.isEmpty()) {
      int node = queue.poll();
      if (node == last) {
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
