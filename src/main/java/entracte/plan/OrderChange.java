package entracte.plan;

import entracte.check.PermittedOrders;
import java.util.SplittableRandom;

/**
 * Random changes to an order that keep to the rules: a run of songs moves elsewhere, two songs
 * change places, or a run is turned round.
 */
final class OrderChange {
  private static final int TRIES = 50;

  private final PermittedOrders permitted;
  private final boolean free;
  private final SplittableRandom random;

  OrderChange(PermittedOrders permitted, SplittableRandom random) {
    this.permitted = permitted;
    this.free = !permitted.anyForbidden();
    this.random = random;
  }

  /** Another permitted order; the same one if none was found near. */
  int[] of(int[] order) {
    for (int tries = 0; tries < TRIES && order.length > 1; tries++) {
      int[] other = any(order);
      if (free || permitted.permits(other)) {
        return other;
      }
    }
    return order;
  }

  private int[] any(int[] order) {
    int a = random.nextInt(order.length);
    int b = random.nextInt(order.length);
    int from = Math.min(a, b);
    int to = Math.max(a, b);
    return switch (random.nextInt(3)) {
      case 0 -> moved(order, from, to, random.nextInt(order.length));
      case 1 -> exchanged(order, a, b);
      default -> turned(order, from, to);
    };
  }

  /** The songs at {@code from} to {@code to} moved so that they begin at, or end near, a place. */
  private static int[] moved(int[] order, int from, int to, int place) {
    int length = to - from + 1;
    int begin = Math.min(place, order.length - length);
    int[] other = new int[order.length];
    System.arraycopy(order, from, other, begin, length);
    int at = 0;
    for (int i = 0; i < order.length; i++) {
      if (i < from || i > to) {
        at = at == begin ? begin + length : at;
        other[at++] = order[i];
      }
    }
    return other;
  }

  private static int[] exchanged(int[] order, int a, int b) {
    int[] other = order.clone();
    other[a] = order[b];
    other[b] = order[a];
    return other;
  }

  private static int[] turned(int[] order, int from, int to) {
    int[] other = order.clone();
    for (int i = from; i <= to; i++) {
      other[i] = order[from + to - i];
    }
    return other;
  }
}
