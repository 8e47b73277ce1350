package entracte.plan;

import java.util.Arrays;

/**
 * Counts, song by song, the cords that need at least each length in stock, and those that no length
 * can reach. Where there are more than the bag has of such lengths, the song cannot be patched so,
 * whatever else is plugged. Time of a change: the number of lengths.
 */
final class LengthCount {
  private final Problem problem;

  /** The lengths in stock, rising. */
  private final int[] lengths;

  /** How many cords there are of each length or more; last, of none. */
  private final int[] stock;

  /** How many cords of each song need a length or more; last, more than any length. */
  private final int[][] needing;

  private int missing;
  private int tooFar;

  LengthCount(Problem problem) {
    this.problem = problem;
    var bag = problem.rig.rig.cords().countByLengthCm();
    lengths = bag.keySet().stream().mapToInt(Integer::intValue).toArray();
    stock = new int[lengths.length + 1];
    for (int i = lengths.length - 1; i >= 0; i--) {
      stock[i] = stock[i + 1] + bag.get(lengths[i]);
    }
    needing = new int[problem.songs()][stock.length];
  }

  void plug(int song, int source, int sink) {
    int[] cords = needing[song];
    int index = indexOf(source, sink);
    tooFar += index == lengths.length ? 1 : 0;
    for (int i = index; i >= 0; i--) {
      missing += cords[i]++ >= stock[i] ? 1 : 0;
    }
  }

  void unplug(int song, int source, int sink) {
    int[] cords = needing[song];
    int index = indexOf(source, sink);
    tooFar -= index == lengths.length ? 1 : 0;
    for (int i = index; i >= 0; i--) {
      missing -= --cords[i] >= stock[i] ? 1 : 0;
    }
  }

  private int indexOf(int source, int sink) {
    RigIndex rig = problem.rig;
    int needed = problem.lengthNeeded[rig.moduleOfSocket[source]][rig.moduleOfSocket[sink]];
    return needed == Problem.TOO_FAR ? lengths.length : Arrays.binarySearch(lengths, needed);
  }

  /** How many cords the songs lack; one may be counted with several lengths. */
  int missing() {
    return missing;
  }

  /** How many of the cords are longer than any. */
  int tooFar() {
    return tooFar;
  }
}
