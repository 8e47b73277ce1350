package entracte.plan;

import java.util.Arrays;

/**
 * A binary heap of the nodes 0 to n-1 by their distances, in which a node may come nearer (Williams
 * 1964; Dijkstra 1959 is what it is for). The distances are the owner's; it tells when one falls.
 */
final class NearestFirst {
  private static final int OUTSIDE = -1;

  private final long[] distance;
  private final int[] heap;
  private final int[] at;
  private int size;

  NearestFirst(long[] distance) {
    this.distance = distance;
    heap = new int[distance.length];
    at = new int[distance.length];
    Arrays.fill(at, OUTSIDE);
  }

  boolean isEmpty() {
    return size == 0;
  }

  void clear() {
    for (int i = 0; i < size; i++) {
      at[heap[i]] = OUTSIDE;
    }
    size = 0;
  }

  /** Takes in a node, or moves it up after its distance fell. */
  void nearer(int node) {
    int i = at[node] == OUTSIDE ? size++ : at[node];
    while (i > 0 && distance[heap[(i - 1) / 2]] > distance[node]) {
      put(heap[(i - 1) / 2], i);
      i = (i - 1) / 2;
    }
    put(node, i);
  }

  /** Takes out the nearest. */
  int poll() {
    int nearest = heap[0];
    at[nearest] = OUTSIDE;
    int last = heap[--size];
    if (size > 0) {
      sink(last);
    }
    return nearest;
  }

  private void sink(int node) {
    int i = 0;
    for (int child = 1; child < size; child = 2 * i + 1) {
      if (child + 1 < size && distance[heap[child + 1]] < distance[heap[child]]) {
        child++;
      }
      if (distance[heap[child]] >= distance[node]) {
        break;
      }
      put(heap[child], i);
      i = child;
    }
    put(node, i);
  }

  private void put(int node, int i) {
    heap[i] = node;
    at[node] = i;
  }
}
