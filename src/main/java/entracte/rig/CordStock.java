package entracte.rig;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * The patch cords in the bag, by length in cm. Where length does not matter all stand under {@link
 * #ANY_LENGTH}.
 */
public record CordStock(NavigableMap<Integer, Integer> countByLengthCm) {
  public static final int ANY_LENGTH = 0;
  private static final int PLENTY = 1_000_000;

  /** 1.2 x 25 + 10 is 40, whatever binary fractions make of it. */
  private static final double ROUNDING_CM = 1e-9;

  public CordStock {
    countByLengthCm = Collections.unmodifiableNavigableMap(new TreeMap<>(countByLengthCm));
    if (countByLengthCm.values().stream().anyMatch(count -> count < 0)) {
      throw new IllegalArgumentException("a stock below nothing: " + countByLengthCm);
    }
  }

  public static CordStock ofAnyLength(int count) {
    return new CordStock(new TreeMap<>(Map.of(ANY_LENGTH, count)));
  }

  /** A rig that does not say: more cords than any set could use. */
  public static CordStock unlimited() {
    return ofAnyLength(PLENTY);
  }

  public boolean lengthMatters() {
    return !countByLengthCm.containsKey(ANY_LENGTH);
  }

  public boolean isUnlimited() {
    return total() >= PLENTY;
  }

  public int total() {
    return countByLengthCm.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** The shortest length in stock that covers {@code cm}; empty if none does. */
  public OptionalInt lengthFor(double cm) {
    if (!lengthMatters()) {
      return OptionalInt.of(ANY_LENGTH);
    }
    return countByLengthCm.entrySet().stream()
        .filter(e -> e.getValue() > 0 && e.getKey() >= cm - ROUNDING_CM)
        .mapToInt(Map.Entry::getKey)
        .findFirst();
  }

  /** The same bag with so many more cords of its greatest length, which serve for any shorter. */
  public CordStock withMore(int count) {
    TreeMap<Integer, Integer> more = new TreeMap<>(countByLengthCm);
    more.merge(more.isEmpty() ? ANY_LENGTH : more.lastKey(), count, Integer::sum);
    return new CordStock(more);
  }
}
