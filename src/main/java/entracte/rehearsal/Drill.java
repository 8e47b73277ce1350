package entracte.rehearsal;

import java.util.ArrayList;
import java.util.List;

/**
 * One changeover against the clock: a press ends each step. Going back a step takes its end away;
 * the clock runs on. Times are given in nanoseconds of any clock that only goes forward.
 */
final class Drill {
  private static final double NANOS = 1e9;

  private final int steps;
  private final long begun;
  private final List<Long> ends = new ArrayList<>();
  private int slips;

  Drill(int steps, long nowNanos) {
    this.steps = steps;
    this.begun = nowNanos;
  }

  /** Which step is being done, from 0; as many as there are if all are. */
  int at() {
    return ends.size();
  }

  boolean done() {
    return ends.size() == steps;
  }

  /** The step is done. */
  void press(long nowNanos) {
    if (!done()) {
      ends.add(nowNanos);
    }
  }

  /** All steps that are left are done; they share the time since the last press. */
  void pressForAll(long nowNanos) {
    long from = last();
    int left = steps - ends.size();
    for (int i = 1; i <= left; i++) {
      ends.add(from + (nowNanos - from) * i / left);
    }
  }

  void slip() {
    slips++;
  }

  /** The step before was not done after all. */
  void back() {
    if (!ends.isEmpty()) {
      ends.remove(ends.size() - 1);
    }
  }

  int slips() {
    return slips;
  }

  /** Seconds from the start to the last press. */
  double seconds() {
    return (last() - begun) / NANOS;
  }

  /** Seconds from the start until now. */
  double secondsAt(long nowNanos) {
    return (nowNanos - begun) / NANOS;
  }

  /** The seconds of each step that is done. */
  List<Double> each() {
    List<Double> each = new ArrayList<>();
    long from = begun;
    for (long end : ends) {
      each.add((end - from) / NANOS);
      from = end;
    }
    return each;
  }

  private long last() {
    return ends.isEmpty() ? begun : ends.get(ends.size() - 1);
  }
}
