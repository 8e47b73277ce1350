package entracte.rehearsal;

import java.util.ArrayList;
import java.util.List;

/**
 * What came of adding the times of a file.
 *
 * @param runs that the log has now
 * @param leftOut what it did not take, in the order of the file
 */
public record Taken(int runs, List<LeftOut> leftOut) {
  /** More would push the first ones off the screen. */
  private static final int MOST_TOLD = 8;

  /**
   * Lines that follow one another and were not taken.
   *
   * @param first its number in the file, from 1
   * @param last the last one's number; comments may lie between
   * @param count of those with a time
   */
  public record LeftOut(int first, int last, int count, String why) {
    private LeftOut with(LeftOut next) {
      return new LeftOut(first, next.last(), count + next.count(), why);
    }

    private String text() {
      return "  "
          + (first == last ? "line " + first : "lines " + first + " to " + last)
          + ": "
          + why;
    }
  }

  public Taken {
    leftOut = List.copyOf(leftOut);
  }

  /** In words; the first line tells whether anything was left out. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(Added.added(runs) + (leftOut.isEmpty() ? "." : ". Left out:"));
    leftOut.stream().limit(MOST_TOLD).map(LeftOut::text).forEach(lines::add);
    int more = leftOut.stream().skip(MOST_TOLD).mapToInt(LeftOut::count).sum();
    if (more > 0) {
      lines.add("  and " + (more == 1 ? "1 more line" : more + " more lines"));
    }
    return lines;
  }

  /** Gathers it, line by line. */
  static final class Builder {
    private final List<LeftOut> leftOut = new ArrayList<>();
    private int runs;
    private boolean goesOn;

    int runs() {
      return runs;
    }

    void add() {
      runs++;
      goesOn = false;
    }

    /** What follows on lines left out for the same reason is told with them. */
    void leaveOut(LeftOut some) {
      int end = leftOut.size() - 1;
      boolean more = goesOn && leftOut.get(end).why().equals(some.why());
      leftOut.add(more ? leftOut.remove(end).with(some) : some);
      goesOn = true;
    }

    Taken done() {
      return new Taken(runs, leftOut);
    }
  }
}
