package entracte.rehearsal;

import java.time.InstantSource;
import java.util.function.LongSupplier;

/**
 * The time, from outside.
 *
 * @param now the time of day, for the log
 * @param nanos of a clock that only goes forward, for lengths
 */
public record Clock(InstantSource now, LongSupplier nanos) {
  /** The machine's own. */
  public static Clock real() {
    return new Clock(InstantSource.system(), System::nanoTime);
  }
}
