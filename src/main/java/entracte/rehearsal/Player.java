package entracte.rehearsal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How quick a player is at each kind of work, as a factor on the model's seconds.
 *
 * <p>Least squares with no factor below zero ({@link Nnls}) over all runs, each against the time
 * expected of it, so that long and short ones count alike. Where steps were timed singly they stand
 * for their run. Early runs of a changeover are first brought to what a trained hand would take, by
 * the usual learning curve.
 *
 * <p>Thin data must not run away: each factor is drawn toward the player's speed as a whole, and
 * that toward 1, by rows of their own with the strength of a normal prior (ridge regression). With
 * no run at all every factor is 1; with many the prior is outweighed.
 */
final class Player {
  /** How far players differ as a whole, and within themselves by kind of work. Estimates. */
  private static final double SPEED_DOUBT = 0.3;

  private static final double WORK_DOUBT = 0.25;

  /** How much one run and one step scatter, as a part of their time. Estimates. */
  private static final double RUN_SCATTER = 0.2;

  private static final double STEP_SCATTER = 0.5;

  private static final int UNKNOWNS = Work.values().length + 1;
  private static final int SPEED = UNKNOWNS - 1;

  private final Map<Work, Double> factors = new EnumMap<>(Work.class);
  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> targets = new ArrayList<>();

  private Player() {}

  static Player of(Histories histories) {
    Player player = new Player();
    for (List<Run> runs : histories.all()) {
      for (int n = 0; n < runs.size(); n++) {
        player.learn(runs.get(n), Law.usualPart(n + 1));
      }
    }
    player.drawTogether();
    double[] solved =
        Nnls.solve(
            player.rows.toArray(double[][]::new),
            player.targets.stream().mapToDouble(Double::doubleValue).toArray());
    Arrays.stream(Work.values()).forEach(w -> player.factors.put(w, solved[w.ordinal()]));
    return player;
  }

  /** What the player's time is, of the model's. */
  double factor(Work work) {
    return factors.get(work);
  }

  /** The player's seconds for what the model thinks so. */
  double seconds(Makeup makeup) {
    return Arrays.stream(Work.values()).mapToDouble(w -> factor(w) * makeup.of(w)).sum();
  }

  private void learn(Run run, double untrained) {
    if (run.each().isEmpty()) {
      learn(run.seconds() / untrained, run.makeup(), RUN_SCATTER);
    } else {
      run.each().forEach(s -> learn(s.seconds() / untrained, s.makeup(), STEP_SCATTER));
    }
  }

  private void learn(double seconds, Makeup makeup, double scatter) {
    double expected = makeup.total();
    if (expected > 0) {
      double[] row = new double[UNKNOWNS];
      Arrays.stream(Work.values())
          .forEach(w -> row[w.ordinal()] = makeup.of(w) / expected / scatter);
      add(row, seconds / expected / scatter);
    }
  }

  private void drawTogether() {
    for (Work work : Work.values()) {
      double[] row = new double[UNKNOWNS];
      row[work.ordinal()] = 1 / WORK_DOUBT;
      row[SPEED] = -1 / WORK_DOUBT;
      add(row, 0);
    }
    double[] speed = new double[UNKNOWNS];
    speed[SPEED] = 1 / SPEED_DOUBT;
    add(speed, 1 / SPEED_DOUBT);
  }

  private void add(double[] row, double target) {
    rows.add(row);
    targets.add(target);
  }
}
