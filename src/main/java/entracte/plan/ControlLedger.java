package entracte.plan;

import java.util.Arrays;
import java.util.Optional;

/**
 * The least turns and flips, control by control. Each song wants a control within an interval or
 * leaves it free; the fewest turns come from keeping the common part of the intervals and turning
 * only when it becomes empty (interval piercing in sequence). From a known position before the show
 * a turn in the set-up may save one later, or none, so both ways are weighed.
 */
final class ControlLedger {
  private final int columns;
  private final int words;
  private final long[] wanted;
  private final double[] low;
  private final double[] high;
  private final double[] nominal;
  private final double[] start;
  private final boolean midSet;

  /** Finds the turns where changeovers do not weigh the same. */
  private final Optional<TurnTimes> times;

  ControlLedger(double[] start, int columns, Weights weights) {
    times = weights.areEven() ? Optional.empty() : Optional.of(new TurnTimes(this, weights));
    this.start = start.clone();
    this.columns = columns;
    midSet = weights.setUpColumn() == 0;
    words = Songs.words(columns);
    wanted = new long[start.length * words];
    low = new double[start.length * columns];
    high = new double[start.length * columns];
    nominal = new double[start.length * columns];
    Arrays.fill(low, Double.NaN);
  }

  int columns() {
    return columns;
  }

  /** What finds the turns, if changeovers do not weigh the same. */
  Optional<TurnTimes> times() {
    return times;
  }

  void want(int control, int column, double least, double most, double written) {
    Songs.add(wanted, control * words, column);
    nominal[control * columns + column] = written;
    low[control * columns + column] = least;
    high[control * columns + column] = most;
  }

  void leave(int control, int column) {
    Songs.drop(wanted, control * words, column);
  }

  boolean wants(int control, int column) {
    return Songs.has(wanted, control * words, column);
  }

  double low(int control, int column) {
    return low[control * columns + column];
  }

  double nominal(int control, int column) {
    return nominal[control * columns + column];
  }

  double high(int control, int column) {
    return high[control * columns + column];
  }

  /** The first column from {@code column} on that wants the control; {@code columns} if none. */
  int next(int control, int column) {
    return Songs.next(wanted, control * words, words, column, columns);
  }

  /** The weight of the moves of {@code control}. */
  long cost(int control) {
    int first = next(control, 0);
    if (first == columns) {
      return 0;
    }
    if (times.isPresent()) {
      return times.get().cost(control);
    }
    int positions = positionsFrom(control, first);
    if (Double.isNaN(start[control])) {
      return midSet ? positions * Weights.CHANGEOVER : (positions - 1) * Weights.CHANGEOVER + 1;
    }
    int misfit = firstMisfit(control, first);
    long fromStart = misfit == columns ? 0 : positionsFrom(control, misfit) * Weights.CHANGEOVER;
    return midSet ? fromStart : Math.min(fromStart, (positions - 1) * Weights.CHANGEOVER + 1);
  }

  /** Whether, before the show, the start position is best left for the first songs. */
  boolean keepsStart(int control) {
    int first = next(control, 0);
    if (first == columns || Double.isNaN(start[control])) {
      return false;
    }
    int misfit = firstMisfit(control, first);
    long fromStart = misfit == columns ? 0 : positionsFrom(control, misfit) * Weights.CHANGEOVER;
    return midSet || fromStart <= (positionsFrom(control, first) - 1) * Weights.CHANGEOVER + 1;
  }

  double start(int control) {
    return start[control];
  }

  /** The first column that the start position does not suit. */
  int firstMisfit(int control, int first) {
    int t = first;
    while (t < columns && low(control, t) <= start[control] && start[control] <= high(control, t)) {
      t = next(control, t + 1);
    }
    return t;
  }

  /** The first column from {@code column} on that no position shares with those before. */
  int runEnd(int control, int column) {
    double least = Double.NEGATIVE_INFINITY;
    double most = Double.POSITIVE_INFINITY;
    int t = column;
    while (t < columns) {
      least = Math.max(least, low(control, t));
      most = Math.min(most, high(control, t));
      if (least > most) {
        return t;
      }
      t = next(control, t + 1);
    }
    return columns;
  }

  /**
   * Where a control can still have been standing since its last turn.
   *
   * @param low NaN if nothing is known of it and nothing was wanted
   */
  record Run(double low, double high) {
    boolean isFresh() {
      return Double.isNaN(low);
    }
  }

  /** The run that a control is in after a column, if turned only when it must be. */
  Run lastRun(int control, int upTo) {
    double least = start[control];
    double most = start[control];
    for (int t = next(control, 0); t <= upTo && t < columns; t = next(control, t + 1)) {
      boolean turns = Double.isNaN(least) || low(control, t) > most || high(control, t) < least;
      least = turns ? low(control, t) : Math.max(least, low(control, t));
      most = turns ? high(control, t) : Math.min(most, high(control, t));
    }
    return new Run(least, most);
  }

  private int positionsFrom(int control, int column) {
    int positions = 0;
    for (int t = column; t < columns; t = runEnd(control, t)) {
      positions++;
    }
    return positions;
  }
}
