package entracte.plan;

import java.util.function.DoubleSupplier;

/**
 * The clock of one run of the planner: how the time given is shared between annealing and proof.
 * Where rounds were asked for and not a time, it only tells when the limit is reached, so that the
 * rounds stay the same on any machine.
 */
final class Timekeeper {
  private static final int LONGER_EACH_ROUND = 2;

  /** Of a given time, when the first proof ends, and twice that when the first search does. */
  private static final double FIRST = 0.1;

  /** When annealing is cold, of a given time: the rest writes out the plan. */
  private static final double MOST_OF_IT = 0.95;

  /** Of the time left, what the last annealing takes; the rest is for the proof. */
  private static final double LAST = 0.7;

  /** The same where a proof is not to be hoped for. */
  private static final double LAST_OF_A_FAR_ONE = 0.88;

  private final Options options;
  private final long begun;
  private double stepsPerSecond;
  private double annealEnd;

  /** How many steps there is time for. */
  private double room = Double.POSITIVE_INFINITY;

  /** Whether this round takes most of the time that is left. */
  private boolean isLast;

  private double shareOfTheLast = LAST;
  private double roundBegun;
  private double proofEnd = Double.POSITIVE_INFINITY;

  Timekeeper(Options options, long begun) {
    this.options = options;
    this.begun = begun;
  }

  double seconds() {
    return (System.nanoTime() - begun) / 1e9;
  }

  /** Whether a time was asked for rather than rounds. */
  private boolean isTimed() {
    return options.rounds() == Options.NO_LIMIT;
  }

  boolean isUp() {
    return seconds() > options.seconds();
  }

  boolean isOver() {
    return isUp() || options.cancelled().getAsBoolean();
  }

  /** Half of the time is for the gaps, if they are the aim. */
  boolean mustStop() {
    return isOver() || options.aim() == Aim.EVEN && seconds() > options.seconds() / 2;
  }

  void beginRound() {
    roundBegun = seconds();
  }

  /** The first proof is short. */
  void beginFirstProof() {
    proofEnd = isTimed() ? FIRST * options.seconds() : Double.POSITIVE_INFINITY;
  }

  /** While there is a next round, the proof takes as long as the search before it. */
  void beginProof() {
    proofEnd = isTimed() && !isLast ? 2 * seconds() - roundBegun : Double.POSITIVE_INFINITY;
  }

  boolean proofMustStop() {
    return mustStop() || seconds() > proofEnd;
  }

  /**
   * As many steps as fit into the time given: where what is left will not do for the next round as
   * well, this one takes most of it, for one long cooling is better than two.
   *
   * @param isFar whether the bound is so far from what was found that no proof is near
   */
  long fitting(long steps, boolean isFar) {
    if (!isTimed() || stepsPerSecond == 0) {
      return steps;
    }
    shareOfTheLast = isFar ? LAST_OF_A_FAR_ONE : LAST;
    room = shareOfTheLast * (options.seconds() - seconds()) * stepsPerSecond;
    isLast = isFar || room < (LONGER_EACH_ROUND + 1) * steps;
    return isLast ? Long.MAX_VALUE : steps;
  }

  /** How much longer a round is than the first. */
  static long longer(int round) {
    return (long) Math.pow(LONGER_EACH_ROUND, Math.min(round, 30));
  }

  boolean hasTimeFor(double steps, long asked) {
    return Math.min(asked, room) >= steps;
  }

  /**
   * Says when the annealing ends that begins now.
   *
   * @param isProbe whether it only shows if the bag will do
   * @param isBefore whether there is no plan yet, so that another may have to come after it
   */
  void beginAnnealing(boolean isProbe, boolean isBefore) {
    double all = options.seconds();
    if (isProbe && isTimed()) {
      annealEnd = 2 * FIRST * all;
    } else if (isLast) {
      annealEnd = seconds() + shareOfTheLast * (all - seconds());
    } else {
      annealEnd = all * (isBefore ? LAST : MOST_OF_IT);
    }
  }

  void tookSteps(long steps, double since) {
    stepsPerSecond = steps / Math.max(seconds() - since, 1e-3);
  }

  /** How much is gone of the time for annealing from now on; always 0 if no time was asked for. */
  DoubleSupplier gone() {
    if (!isTimed()) {
      return () -> 0;
    }
    double now = seconds();
    double end = annealEnd;
    return () -> (seconds() - now) / Math.max(end - now, 1e-3);
  }

  /** While there is no plan, a search with an endless bag leaves time to the one after it. */
  boolean mustMoveOn() {
    return mustStop() || seconds() > annealEnd;
  }
}
