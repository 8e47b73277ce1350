package entracte.plan;

import java.util.Arrays;

/**
 * Where every control stands in every column, in as few turns as {@link ControlLedger} counts.
 * Within the part that several songs share, a knob is set to the figure that was written for most
 * of them, or else as near to the first as they allow.
 */
final class PositionSchedule {
  /** By control and column; NaN while unknown. */
  final double[][] position;

  private final Layout layout;
  private final ControlLedger controls;
  private final int columns;

  PositionSchedule(Layout layout) {
    this.layout = layout;
    controls = layout.controls;
    columns = layout.problem.columns();
    position = new double[layout.rig.controls.size()][columns];
    for (int control = 0; control < position.length; control++) {
      settle(control);
    }
  }

  private void settle(int control) {
    double[] at = position[control];
    Arrays.fill(at, controls.start(control));
    if (controls.times().isPresent()) {
      controls
          .times()
          .get()
          .turns(control)
          .forEach(turn -> fill(at, turn.column(), common(control, turn.first(), turn.end())));
      return;
    }
    int t = controls.next(control, 0);
    if (controls.keepsStart(control)) {
      t = controls.firstMisfit(control, t);
    } else if (t < columns && !layout.problem.start.midSet()) {
      int end = controls.runEnd(control, t);
      fill(at, 1, common(control, t, end));
      t = end;
    }
    while (t < columns) {
      int end = controls.runEnd(control, t);
      fill(at, t, common(control, t, end));
      t = end;
    }
  }

  private static void fill(double[] at, int from, double value) {
    Arrays.fill(at, from, at.length, value);
  }

  /** A position that suits every song that cares from column {@code from} up to {@code end}. */
  private double common(int control, int from, int end) {
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    for (int t = from; t < end; t = controls.next(control, t + 1)) {
      low = Math.max(low, controls.low(control, t));
      high = Math.min(high, controls.high(control, t));
    }
    double best = Double.NaN;
    int most = 0;
    for (int t = from; t < end; t = controls.next(control, t + 1)) {
      double nominal = Math.min(high, Math.max(low, controls.nominal(control, t)));
      int count = countOf(control, from, end, nominal);
      if (count > most || Double.isNaN(best)) {
        most = count;
        best = nominal;
      }
    }
    return best;
  }

  private int countOf(int control, int from, int end, double nominal) {
    int count = 0;
    for (int t = from; t < end; t = controls.next(control, t + 1)) {
      count += controls.nominal(control, t) == nominal ? 1 : 0;
    }
    return count;
  }
}
