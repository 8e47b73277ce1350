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
 * <p>A changeover may be harder or easier as a whole than the model thinks, and the curve steeper
 * or flatter. So each has a factor of its own besides, near 1, which all of its runs share: what
 * one changeover has that the others have not shown goes there, and however often one is played, it
 * tells only so much of the rest.
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

  /** How far one changeover may be off as a whole, its learning included. An estimate. */
  private static final double CHANGEOVER_DOUBT = 0.3;

  private static final int SPEED = Work.values().length;
  private static final int FIRST_CHANGEOVER = SPEED + 1;

  private final Map<Work, Double> factors = new EnumMap<>(Work.class);
  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> targets = new ArrayList<>();

  private final int unknowns;

  private Player(int changeovers) {
    unknowns = FIRST_CHANGEOVER + changeovers;
  }

  static Player of(Histories histories) {
    Player player = new Player(histories.all().size());
    int changeover = FIRST_CHANGEOVER;
    for (List<Run> runs : histories.all()) {
      for (int n = 0; n < runs.size(); n++) {
        player.learn(runs.get(n), Law.usualPart(n + 1), changeover);
      }
      player.draw(changeover, CHANGEOVER_DOUBT);
      changeover++;
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

  private void learn(Run run, double untrained, int changeover) {
    if (run.each().isEmpty()) {
      learn(run.seconds() / untrained, run.makeup(), RUN_SCATTER, changeover);
    } else {
      for (Run.Split step : run.each()) {
        learn(step.seconds() / untrained, step.makeup(), STEP_SCATTER, changeover);
      }
    }
  }

  /** The changeover's own factor is added to the others' less 1, so that the sum stays linear. */
  private void learn(double seconds, Makeup makeup, double scatter, int changeover) {
    double expected = makeup.total();
    if (expected > 0) {
      double[] row = new double[unknowns];
      row[changeover] = 1 / scatter;
      Arrays.stream(Work.values())
          .forEach(w -> row[w.ordinal()] = makeup.of(w) / expected / scatter);
      add(row, (seconds / expected + 1) / scatter);
    }
  }

  private void drawTogether() {
    for (Work work : Work.values()) {
      double[] row = new double[unknowns];
      row[work.ordinal()] = 1 / WORK_DOUBT;
      row[SPEED] = -1 / WORK_DOUBT;
      add(row, 0);
    }
    draw(SPEED, SPEED_DOUBT);
  }

  /** Draws one unknown toward 1. */
  private void draw(int unknown, double doubt) {
    double[] row = new double[unknowns];
    row[unknown] = 1 / doubt;
    add(row, 1 / doubt);
  }

  private void add(double[] row, double target) {
    rows.add(row);
    targets.add(target);
  }
}
