package entracte.plan;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * How to search.
 *
 * @param seconds the most time to spend; what is cut short by it depends on the machine
 * @param rounds the most rounds of search; the same rounds give the same plan anywhere
 * @param seed the same seed, input and number of rounds give the same plan
 * @param cancelled asked now and then; once true, the best so far is returned
 * @param progress told the best moves and the bound so far, from the searching thread
 * @param tempo the time of each move, for {@link Aim#FASTEST}
 * @param near a plan to begin from, of a set with some of the same songs
 * @param clock how long changeovers take: for {@link Aim#EVEN}, which needs it, and so that other
 *     plans put moves where there is time
 */
public record Options(
    Aim aim,
    Start start,
    double seconds,
    int rounds,
    long seed,
    BooleanSupplier cancelled,
    Consumer<Progress> progress,
    Tempo tempo,
    Optional<Plan> near,
    Optional<Clock> clock) {
  /** The time after which a search by rounds is cut short all the same. */
  public static final double DEFAULT_SECONDS = 60;

  /** As many rounds as suit the size of the set. */
  public static final int FITTING_ROUNDS = 0;

  public static final int NO_LIMIT = Integer.MAX_VALUE;
  public static final long DEFAULT_SEED = 1;

  /** The best plan so far has {@code moves}; none has fewer than {@code lowerBound}. */
  public record Progress(int moves, int lowerBound, double seconds) {
    /** The same as seen by a search that has taken so long in all. */
    Progress at(double other) {
      return new Progress(moves, lowerBound, other);
    }
  }

  public static Options defaults() {
    return new Options(
        Aim.FEWEST,
        Start.bare(),
        DEFAULT_SECONDS,
        FITTING_ROUNDS,
        DEFAULT_SEED,
        () -> false,
        p -> {},
        Tempo.steady(),
        Optional.empty(),
        Optional.empty());
  }

  public Options withAim(Aim to) {
    return new Options(to, start, seconds, rounds, seed, cancelled, progress, tempo, near, clock);
  }

  public Options withStart(Start to) {
    return new Options(aim, to, seconds, rounds, seed, cancelled, progress, tempo, near, clock);
  }

  /** Searches for so long, and no longer by rounds. */
  public Options withSeconds(double to) {
    return new Options(aim, start, to, NO_LIMIT, seed, cancelled, progress, tempo, near, clock);
  }

  /** The same rounds, cut short after another time. */
  public Options withTime(double to) {
    return new Options(aim, start, to, rounds, seed, cancelled, progress, tempo, near, clock);
  }

  public Options withRounds(int to) {
    return new Options(aim, start, seconds, to, seed, cancelled, progress, tempo, near, clock);
  }

  public Options withSeed(long to) {
    return new Options(aim, start, seconds, rounds, to, cancelled, progress, tempo, near, clock);
  }

  public Options withCancel(BooleanSupplier to) {
    return new Options(aim, start, seconds, rounds, seed, to, progress, tempo, near, clock);
  }

  public Options withProgress(Consumer<Progress> to) {
    return new Options(aim, start, seconds, rounds, seed, cancelled, to, tempo, near, clock);
  }

  public Options withTempo(Tempo to) {
    return new Options(aim, start, seconds, rounds, seed, cancelled, progress, to, near, clock);
  }

  public Options withNear(Plan to) {
    return new Options(
        aim, start, seconds, rounds, seed, cancelled, progress, tempo, Optional.of(to), clock);
  }

  public Options withClock(Clock to) {
    return new Options(
        aim, start, seconds, rounds, seed, cancelled, progress, tempo, near, Optional.of(to));
  }

  /** What a plan weighs by the aim, in the prices of its problem: see {@link Prices}. */
  long weigh(Plan plan) {
    return aim == Aim.FASTEST
        ? Math.round(Prices.UNITS_PER_SECOND * plan.seconds(tempo.inHundredths()))
            * Weights.CHANGEOVER
        : Weights.of(plan);
  }

  /** Whether the aim makes the one plan better than the other. */
  boolean prefers(Plan one, Plan other) {
    return weigh(one) < weigh(other);
  }
}
