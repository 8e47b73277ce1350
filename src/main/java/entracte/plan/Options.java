package entracte.plan;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * How to search.
 *
 * @param seconds the most time to spend; what is cut short by it depends on the machine
 * @param rounds the most rounds of search; the same rounds give the same plan anywhere
 * @param seed the same seed, input and number of steps give the same plan
 * @param cancelled asked now and then; once true, the best so far is returned
 * @param progress told the best moves and the bound so far, from the searching thread
 */
public record Options(
    Aim aim,
    Start start,
    double seconds,
    int rounds,
    long seed,
    BooleanSupplier cancelled,
    Consumer<Progress> progress) {
  /** The time after which a search by rounds is cut short all the same. */
  public static final double DEFAULT_SECONDS = 20;

  /** As many rounds as suit the size of the set. */
  public static final int FITTING_ROUNDS = 0;

  public static final int NO_LIMIT = Integer.MAX_VALUE;
  public static final long DEFAULT_SEED = 1;

  /** The best plan so far has {@code moves}; none has fewer than {@code lowerBound}. */
  public record Progress(int moves, int lowerBound, double seconds) {}

  public static Options defaults() {
    return new Options(
        Aim.FEWEST,
        Start.bare(),
        DEFAULT_SECONDS,
        FITTING_ROUNDS,
        DEFAULT_SEED,
        () -> false,
        p -> {});
  }

  public Options withAim(Aim newAim) {
    return new Options(newAim, start, seconds, rounds, seed, cancelled, progress);
  }

  public Options withStart(Start newStart) {
    return new Options(aim, newStart, seconds, rounds, seed, cancelled, progress);
  }

  /** Searches for so long, and no longer by rounds. */
  public Options withSeconds(double newSeconds) {
    return new Options(aim, start, newSeconds, NO_LIMIT, seed, cancelled, progress);
  }

  public Options withRounds(int newRounds) {
    return new Options(aim, start, seconds, newRounds, seed, cancelled, progress);
  }

  public Options withCancel(BooleanSupplier newCancelled) {
    return new Options(aim, start, seconds, rounds, seed, newCancelled, progress);
  }

  public Options withSeed(long newSeed) {
    return new Options(aim, start, seconds, rounds, newSeed, cancelled, progress);
  }

  public Options withProgress(Consumer<Progress> newProgress) {
    return new Options(aim, start, seconds, rounds, seed, cancelled, newProgress);
  }
}
