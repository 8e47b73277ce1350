package entracte.read;

import entracte.rig.Scale;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Figures, times and lengths as a musician writes them. Each is empty if the text is none. */
final class Amounts {
  /** Few enough digits that no figure takes long to read or runs over. */
  private static final String FIGURE = "[+-]?\\d{1,9}(?:\\.\\d{1,20})?";

  private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");
  private static final Pattern DECIMAL = Pattern.compile(FIGURE);
  private static final Pattern SCALE =
      Pattern.compile("(" + FIGURE + ")\\s*\\.\\.\\s*(" + FIGURE + ")");
  private static final Pattern LENGTH = Pattern.compile("(" + FIGURE + ")\\s*(mm|cm|m)");
  private static final Pattern CLOCK =
      Pattern.compile("(?:(\\d{1,3}):([0-5]\\d)|(\\d{1,3})):([0-5]\\d)");
  private static final Pattern SPELT =
      Pattern.compile(
          "(?:([+-]?\\d{1,3}(?:\\.\\d{1,3})?)\\s*h)?\\s*(?:([+-]?\\d{1,5}(?:\\.\\d{1,3})?)\\s*min)?"
              + "\\s*(?:([+-]?\\d{1,6}(?:\\.\\d{1,3})?)\\s*s)?"
              + "\\s*(?:([+-]?\\d{1,6}(?:\\.\\d{1,3})?)\\s*ms)?");

  private static final int MINUTE = 60;
  private static final int HOUR = 3600;
  private static final double MILLIS = 1000;

  private Amounts() {}

  static OptionalInt whole(String text) {
    String figure = text.strip();
    return WHOLE.matcher(figure).matches()
        ? OptionalInt.of(Integer.parseInt(figure))
        : OptionalInt.empty();
  }

  static OptionalDouble decimal(String text) {
    String figure = text.strip();
    return DECIMAL.matcher(figure).matches()
        ? OptionalDouble.of(new BigDecimal(figure).doubleValue())
        : OptionalDouble.empty();
  }

  /** {@code -5..5}; the first figure is the lower end only if the musician wrote it so. */
  record Ends(double first, double last) {
    Optional<Scale> scale() {
      return first < last ? Optional.of(new Scale(first, last)) : Optional.empty();
    }
  }

  static Optional<Ends> ends(String text) {
    Matcher m = SCALE.matcher(text.strip());
    return m.matches()
        ? Optional.of(new Ends(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))))
        : Optional.empty();
  }

  /**
   * Seconds of {@code 40 s}, {@code 2:30}, {@code 1 min}, {@code 1 min 30 s}, {@code 1:02:03},
   * {@code 300 ms}.
   */
  static OptionalDouble seconds(String text) {
    Matcher clock = CLOCK.matcher(text.strip());
    if (clock.matches()) {
      double minutes =
          clock.group(3) != null
              ? part(clock.group(3))
              : part(clock.group(1)) * MINUTE + part(clock.group(2));
      return OptionalDouble.of(minutes * MINUTE + part(clock.group(4)));
    }
    Matcher spelt = SPELT.matcher(text.strip());
    if (text.isBlank() || !spelt.matches()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        part(spelt.group(1)) * HOUR
            + part(spelt.group(2)) * MINUTE
            + part(spelt.group(3))
            + part(spelt.group(4)) / MILLIS);
  }

  /** The text with the units that people write instead of ours put right. */
  static String respeltTime(String text) {
    return text.replaceAll("(?i)\\s*(?<![a-z])(?:milliseconds?|msecs?)(?![a-z])\\.?", " ms")
        .replaceAll("(?i)\\s*(?<![a-z])(?:seconds?|secs?)(?![a-z])\\.?", " s")
        .replaceAll("(?i)\\s*(?<![a-z])(?:minutes?|mins)(?![a-z])\\.?", " min")
        .replaceAll("(?i)\\s*(?<![a-z])(?:hours?|hrs?)(?![a-z])\\.?", " h");
  }

  private static double part(String figure) {
    return figure == null ? 0 : Double.parseDouble(figure);
  }

  /** Centimetres of {@code 30 cm}, {@code 0.9 m}, {@code 300 mm}. */
  static Optional<BigDecimal> centimetres(String text) {
    Matcher m = LENGTH.matcher(text.strip());
    if (!m.matches()) {
      return Optional.empty();
    }
    int shift = m.group(2).equals("m") ? 2 : m.group(2).equals("mm") ? -1 : 0;
    return Optional.of(new BigDecimal(m.group(1)).movePointRight(shift));
  }
}
