package entracte.stage;

import entracte.cue.TimeText;
import entracte.cue.Verb;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the instrument drifts, and what is said of it: while it warms up, that tuning does not hold
 * yet; later, when the last tuning is old. Only in a changeover, and never by a sound.
 *
 * @param warmUpSeconds from power on until tuning makes sense; the set-up counts from its beginning
 * @param tuneAgainSeconds how long a tuning holds
 */
public record Drift(OptionalDouble warmUpSeconds, OptionalDouble tuneAgainSeconds) {
  private static final double MILLIS = 1000;

  /** Of an instrument of which nothing is known. */
  public static Drift unknown() {
    return new Drift(OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** What the player should know now; empty for nothing. */
  Optional<String> says(Night night, long nowMillis) {
    State now = night.now();
    if (now.phase() != Phase.CHANGEOVER) {
      return Optional.empty();
    }
    return now.began() == 0
        ? warming((nowMillis - now.since()) / MILLIS)
        : old((nowMillis - lastTuned(night)) / MILLIS);
  }

  private Optional<String> warming(double seconds) {
    if (warmUpSeconds.isEmpty()) {
      return Optional.empty();
    }
    double left = warmUpSeconds.getAsDouble() - seconds;
    return Optional.of(
        left > 0
            ? "Warming up: do not tune for another " + TimeText.of(left) + "."
            : "Warm since " + TimeText.of(-left) + ": tuning holds now.");
  }

  private Optional<String> old(double seconds) {
    return tuneAgainSeconds.isPresent() && seconds > tuneAgainSeconds.getAsDouble()
        ? Optional.of("Last tuned " + TimeText.of(seconds) + " ago: tune again, unheard.")
        : Optional.empty();
  }

  /** When a tuning was last ticked off; the set-up ends with one. */
  private static long lastTuned(Night night) {
    return night.past().stream()
        .filter(past -> past.label().startsWith(Verb.TUNE.name()))
        .mapToLong(Night.Past::atMillis)
        .max()
        .orElse(night.now().began());
  }
}
