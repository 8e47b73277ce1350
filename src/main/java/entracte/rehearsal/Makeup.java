package entracte.rehearsal;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What some steps are made of: expected seconds by kind of work, none below 0. A kind that is
 * missing takes no time.
 */
record Makeup(Map<Work, Double> seconds) {
  Makeup {
    EnumMap<Work, Double> copy = new EnumMap<>(Work.class);
    seconds.forEach(
        (work, each) -> {
          if (!(each >= 0 && each < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(work + " takes " + each);
          }
          if (each > 0) {
            copy.put(work, each);
          }
        });
    seconds = Map.copyOf(copy);
  }

  static Makeup sum(List<Makeup> parts) {
    EnumMap<Work, Double> sum = new EnumMap<>(Work.class);
    parts.forEach(part -> part.seconds.forEach((work, s) -> sum.merge(work, s, Double::sum)));
    return new Makeup(sum);
  }

  double of(Work work) {
    return seconds.getOrDefault(work, 0.0);
  }

  /** What the hands do, without reading and tuning. */
  double hands() {
    return of(Work.PULL) + of(Work.PLUG) + of(Work.TURN) + of(Work.SWITCH);
  }

  double total() {
    return Arrays.stream(Work.values()).mapToDouble(this::of).sum();
  }
}
