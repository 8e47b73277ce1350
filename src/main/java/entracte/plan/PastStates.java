package entracte.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Remembers pasts from which the rest of a window was tried in vain, with the moves that were left
 * for the rest then. Whatever comes to the same past with no more moves left need not try again.
 * When its memory is full it learns nothing new.
 */
final class PastStates {
  private static final int MOST_FIGURES = 24_000_000;

  /** What one entry takes beside its figures. */
  private static final int OVERHEAD = 24;

  private final Past past;
  private final Map<Key, Integer> inVain = new HashMap<>();
  private long remembered;

  /** Figures that compare by what they say. */
  private record Key(int[] figures) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Key key && Arrays.equals(key.figures, figures);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(figures);
    }
  }

  PastStates(Past past) {
    this.past = past;
  }

  /** A past, to be asked about now and told about later. */
  final class Visit {
    private final Key key;
    private final int left;

    private Visit(Key key, int left) {
      this.key = key;
      this.left = left;
    }

    boolean isInVain() {
      Integer tried = inVain.get(key);
      return tried != null && left <= tried;
    }

    /** One of so many numbers, the same for the same past. */
    int share(int shares) {
      return Math.floorMod(key.hashCode(), shares);
    }

    void wasInVain() {
      if (remembered < MOST_FIGURES || inVain.containsKey(key)) {
        remembered += inVain.put(key, left) == null ? key.figures.length + OVERHEAD : 0;
      }
    }
  }

  /**
   * @param left the moves that the rest must keep below
   */
  Visit visit(int song, int place, int left) {
    return new Visit(new Key(past.before(song, place)), left);
  }

  /** Whether all that matters of a past of the problem can be written down. */
  static boolean suit(Problem problem) {
    return problem.start.midSet() || Arrays.stream(problem.startPosition).allMatch(Double::isNaN);
  }
}
