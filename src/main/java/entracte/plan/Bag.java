package entracte.plan;

import entracte.rig.CordStock;
import java.util.Arrays;

/** The cords that are not plugged, by length; lengths are numbered from the shortest. */
final class Bag {
  private final int[] lengths;
  private final int[] stock;
  private final int[] left;

  Bag(CordStock cords) {
    lengths = cords.countByLengthCm().keySet().stream().mapToInt(Integer::intValue).toArray();
    stock = cords.countByLengthCm().values().stream().mapToInt(Integer::intValue).toArray();
    left = new int[stock.length];
  }

  void refill() {
    System.arraycopy(stock, 0, left, 0, stock.length);
  }

  int lengths() {
    return lengths.length;
  }

  int cm(int length) {
    return lengths[length];
  }

  /** The number of a length that is in stock. */
  int indexOf(int cm) {
    return Arrays.binarySearch(lengths, cm);
  }

  int left(int length) {
    return left[length];
  }

  void take(int length) {
    left[length]--;
  }

  void giveBack(int length) {
    left[length]++;
  }

  /** The shortest length in the bag from {@code need} on, or -1. */
  int shortest(int need) {
    for (int length = need; length < left.length; length++) {
      if (left[length] > 0) {
        return length;
      }
    }
    return -1;
  }
}
