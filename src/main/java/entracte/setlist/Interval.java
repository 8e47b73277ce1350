package entracte.setlist;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The knob positions that a song accepts, both ends included. Written {@code 4} or {@code 6.5
 * +-0.5}; the ends are worked out in decimal, so that {@code 0.7 +-0.1} holds 0.8.
 *
 * @param nominal the figure the musician wrote; it may lie outside after clipping
 */
public record Interval(double low, double high, double nominal) {
  private static final Pattern WRITTEN =
      Pattern.compile("([+-]?\\d+(?:\\.\\d+)?)\\s*(?:(?:\\+-|\\+/-|±)\\s*(\\d+(?:\\.\\d+)?))?");

  /** More digits than any panel has, and few enough that no figure takes long to read. */
  private static final int LONGEST = 24;

  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException("an interval rises: " + low + ".." + high);
    }
  }

  public static Interval exactly(double value) {
    return new Interval(value, value, value);
  }

  /** Reads a knob's value; empty if it is none. */
  public static Optional<Interval> parse(String text) {
    Matcher written = WRITTEN.matcher(text.strip());
    if (text.length() > LONGEST || !written.matches()) {
      return Optional.empty();
    }
    BigDecimal nominal = new BigDecimal(written.group(1));
    BigDecimal tolerance =
        written.group(2) == null ? BigDecimal.ZERO : new BigDecimal(written.group(2));
    return Optional.of(
        new Interval(
            nominal.subtract(tolerance).doubleValue(),
            nominal.add(tolerance).doubleValue(),
            nominal.doubleValue()));
  }

  public boolean contains(double value) {
    return low <= value && value <= high;
  }

  /** What both accept; empty if nothing. The nominal value is this one's. */
  public Optional<Interval> meet(Interval other) {
    double newLow = Math.max(low, other.low);
    double newHigh = Math.min(high, other.high);
    return newLow <= newHigh
        ? Optional.of(new Interval(newLow, newHigh, nominal))
        : Optional.empty();
  }
}
