package entracte.rehearsal;

import entracte.cue.Step;
import entracte.rig.Rig;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Takes runs from elsewhere into a log, but for those that it has and those that nobody played. */
final class Intake {
  private final RunLog log;
  private final Learned learned;
  private final Predicate<String> sure;

  /** What came of a run. */
  enum Came {
    ADDED,
    /** The log has it, or had it before it was withdrawn. */
    KNOWN,
    /** It is quicker than hands are, and nobody spoke up for it. */
    HASTY
  }

  /**
   * @param sure asked whether a run was played that is hardly possible
   */
  Intake(RunLog log, Rig rig, Predicate<String> sure) throws IOException {
    this.log = log;
    this.learned = Learned.from(rig, log);
    this.sure = sure;
  }

  /** A changeover that was played, with the seconds of each step. */
  Run run(Instant when, String to, List<Step> steps, List<Double> seconds) {
    List<Makeup> makeup = learned.model().makeup(steps);
    List<Run.Split> each = new ArrayList<>();
    for (int i = 0; i < makeup.size(); i++) {
      each.add(new Run.Split(seconds.get(i), makeup.get(i)));
    }
    double whole = seconds.stream().mapToDouble(Double::doubleValue).sum();
    return new Run(
        when,
        Run.Where.STAGE,
        to,
        Mark.of(steps),
        Math.max(whole, Practice.SHORTEST_SECONDS),
        0,
        Makeup.sum(makeup),
        each);
  }

  /**
   * Adds a run.
   *
   * @param isKnown whether the log has it, or had before it was withdrawn
   */
  Came take(Run run, boolean isKnown) throws IOException {
    if (isKnown) {
      return Came.KNOWN;
    }
    if (!Haste.counts(run, learned.player(), sure)) {
      return Came.HASTY;
    }
    log.add(run);
    return Came.ADDED;
  }
}
