package entracte.rehearsal;

import entracte.rehearsal.Law.Family;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * What the next runs of one changeover may take, given those so far.
 *
 * <p>For each {@link Law} of learning, what the runs took is freed of it; the logarithms that
 * remain scatter about one {@link Level}, so that a run is off by a factor rather than by seconds
 * and never below zero. The next run's logarithm then follows a Student t. The laws are joined by
 * how well each foretold the runs: few runs leave many laws in play and give wide odds. Since a
 * player learns one changeover much as another, what the others say of the laws counts as well
 * ({@link LawEvidence}).
 */
final class Outlook {
  /** The scatter from run to run, as a part of the time, and the runs it is worth. Estimates. */
  static final double SCATTER = 0.15;

  static final double SCATTER_WORTH = 6;

  /** How finely a spread of times is cut for sums over it. */
  private static final int SLICES = 40;

  private static final double PRECISION = 1e-12;
  private static final double MARGIN = 1e-6;
  private static final int MOST_TRIES = 200;

  private final int runs;
  private final List<Branch> branches;

  /** One law of learning, the level under it, and how likely it is. */
  record Branch(Law law, Level level, double weight) {}

  /** A time and how likely it is. */
  record Chance(double seconds, double weight) {}

  private Outlook(int runs, List<Branch> branches) {
    this.runs = runs;
    this.branches = branches;
  }

  /** An outlook of which no other changeover tells anything. */
  static Outlook of(double trainedSeconds, double doubt, List<Double> seconds) {
    return of(trainedSeconds, doubt, seconds, Law.all());
  }

  /**
   * An outlook.
   *
   * @param trainedSeconds what a trained hand is expected to take; 0 if there is nothing to do
   * @param doubt how far that may be off, as a part of it
   * @param seconds of the runs so far, the first first
   * @param laws all that are possible, and how likely each is before these runs
   */
  static Outlook of(
      double trainedSeconds, double doubt, List<Double> seconds, List<Law.Weighted> laws) {
    if (trainedSeconds <= 0) {
      return new Outlook(seconds.size(), List.of());
    }
    List<Branch> branches = new ArrayList<>();
    for (Law.Weighted each : laws) {
      Level level = level(trainedSeconds, doubt, seconds, each.law());
      branches.add(new Branch(each.law(), level, Math.log(each.weight()) + level.logEvidence()));
    }
    return new Outlook(seconds.size(), normalized(branches));
  }

  /** The level of what remains of the runs, once freed of a law. */
  static Level level(double trainedSeconds, double doubt, List<Double> seconds, Law law) {
    double weight = SCATTER * SCATTER / (doubt * doubt);
    Level.Prior prior = new Level.Prior(Math.log(trainedSeconds), weight, SCATTER, SCATTER_WORTH);
    return Level.of(prior, freed(seconds, law));
  }

  private static double[] freed(List<Double> seconds, Law law) {
    double[] logs = new double[seconds.size()];
    for (int n = 0; n < logs.length; n++) {
      logs[n] = Math.log(seconds.get(n)) - law.log(n + 1);
    }
    return logs;
  }

  /** Logarithms of weights turned into weights that sum to 1. */
  private static List<Branch> normalized(List<Branch> branches) {
    double most = branches.stream().mapToDouble(Branch::weight).max().orElseThrow();
    double sum = branches.stream().mapToDouble(b -> Math.exp(b.weight() - most)).sum();
    return branches.stream()
        .map(b -> new Branch(b.law(), b.level(), Math.exp(b.weight() - most) / sum))
        .toList();
  }

  /** How many runs stand behind it. */
  int runs() {
    return runs;
  }

  List<Branch> branches() {
    return branches;
  }

  /** How likely a law of that family is, given the runs. */
  double favours(Family family) {
    return branches.stream()
        .filter(b -> b.law().family() == family)
        .mapToDouble(Branch::weight)
        .sum();
  }

  /**
   * The odds of taking no longer.
   *
   * @param ahead 1 for the next run, 2 for the one after
   */
  double odds(double seconds, int ahead) {
    if (branches.isEmpty()) {
      return 1;
    }
    return seconds <= 0 ? 0 : oddsOfLog(Math.log(seconds), ahead);
  }

  private double oddsOfLog(double log, int ahead) {
    return branches.stream()
        .mapToDouble(b -> b.weight() * b.level().chance(log - b.law().log(runs + ahead)))
        .sum();
  }

  /** The seconds that a run stays below with probability {@code chance}. */
  double below(double chance, int ahead) {
    if (branches.isEmpty()) {
      return 0;
    }
    double t =
        new TDistribution(branches.get(0).level().freedom()).inverseCumulativeProbability(chance);
    DoubleSummaryStatistics ends =
        branches.stream()
            .mapToDouble(b -> middle(b, ahead) + t * b.level().nextSpread())
            .summaryStatistics();
    double low = ends.getMin() - MARGIN; // what all branches stay below lies between theirs
    double high = ends.getMax() + MARGIN;
    BrentSolver solver = new BrentSolver(PRECISION, PRECISION);
    return Math.exp(solver.solve(MOST_TRIES, x -> oddsOfLog(x, ahead) - chance, low, high));
  }

  private double middle(Branch branch, int ahead) {
    return branch.level().mean() + branch.law().log(runs + ahead);
  }

  /** As many runs take longer as shorter. */
  double typical(int ahead) {
    return below(0.5, ahead);
  }

  /** The mean, without the furthest one in a hundred on either side, which has none. */
  double expected(int ahead) {
    return spread(ahead).stream().mapToDouble(c -> c.seconds() * c.weight()).sum();
  }

  /** The mean of what a run is longer than {@code gap}. */
  double over(double gap, int ahead) {
    return spread(ahead).stream()
        .mapToDouble(c -> Math.max(0, c.seconds() - gap) * c.weight())
        .sum();
  }

  /** The times that a run may take, shortest first; their weights sum to 1. */
  List<Chance> spread(int ahead) {
    List<Chance> spread = new ArrayList<>();
    if (branches.isEmpty()) {
      return List.of(new Chance(0, 1));
    }
    double[] slices = slices(branches.get(0).level().freedom());
    for (Branch b : branches) {
      double middle = middle(b, ahead);
      for (double slice : slices) {
        double seconds = Math.exp(middle + slice * b.level().nextSpread());
        spread.add(new Chance(seconds, b.weight() / SLICES));
      }
    }
    spread.sort(Comparator.comparingDouble(Chance::seconds));
    return spread;
  }

  private static double[] slices(double freedom) {
    TDistribution t = new TDistribution(freedom);
    double[] slices = new double[SLICES];
    for (int i = 0; i < SLICES; i++) {
      slices[i] = t.inverseCumulativeProbability((i + 0.5) / SLICES);
    }
    return slices;
  }
}
