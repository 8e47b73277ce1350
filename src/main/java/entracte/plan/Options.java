package entracte.plan;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * How to search.
 *
 * @param seconds the most time to spend
 * @param seed the same seed, input and number of steps give the same plan
 * @param cancelled asked now and then; once true, the best so far is returned
 * @param progress told the best moves and the bound so far, from the searching thread
 */
public record Options(
    Aim aim,
    Start start,
    double seconds,
    long seed,
    BooleanSupplier cancelled,
    Consumer<Progress> progress) {
  public static final double DEFAULT_SECONDS = 2;
  public static final long DEFAULT_SEED = 1;

  /** The best plan so far has {@code moves}; none has fewer than {@code lowerBound}. */
  public record Progress(int moves, int lowerBound, double seconds) {}

  public static Options defaults() {
    return new Options(
        Aim.FEWEST, Start.bare(), DEFAULT_SECONDS, DEFAULT_SEED, () -> false, p -> {});
  }

  public Options withAim(Aim newAim) {
    return new Options(newAim, start, seconds, seed, cancelled, progress);
  }

  public Options withStart(Start newStart) {
    return new Options(aim, newStart, seconds, seed, cancelled, progress);
  }

  public Options withSeconds(double newSeconds) {
    return new Options(aim, start, newSeconds, seed, cancelled, progress);
  }

  public Options withSeed(long newSeed) {
    return new Options(aim, start, seconds, newSeed, cancelled, progress);
  }

  public Options withProgress(Consumer<Progress> newProgress) {
    return new Options(aim, start, seconds, seed, cancelled, newProgress);
  }
}
