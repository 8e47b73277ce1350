package entracte.rig;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Gains in decibels, and positions that are called by them; a {@link Toggle} says which are. */
public final class GainStep {
  private static final Pattern TIMES = Pattern.compile("x ?(\\d{1,4}(?:\\.\\d{1,3})?)");
  private static final Pattern DECIBELS = Pattern.compile("([+-]?\\d{1,3}(?:\\.\\d)?) ?db");

  /** Of a voltage: ten times is 20 dB. */
  private static final double PER_DECADE = 20;

  private GainStep() {}

  /**
   * How many times the voltage: 10 for {@code x10} and for {@code 20 dB}; empty for other names.
   */
  static OptionalDouble factor(String position) {
    String text = position.strip().toLowerCase(Locale.ROOT);
    Matcher times = TIMES.matcher(text);
    Matcher decibels = DECIBELS.matcher(text);
    if (times.matches() && Double.parseDouble(times.group(1)) > 0) {
      return OptionalDouble.of(Double.parseDouble(times.group(1)));
    }
    return decibels.matches()
        ? OptionalDouble.of(factorOf(Double.parseDouble(decibels.group(1))))
        : OptionalDouble.empty();
  }

  /** 6.02 for twice the voltage. */
  public static double decibels(double factor) {
    return PER_DECADE * Math.log10(factor);
  }

  /** Twice the voltage for 6.02. */
  public static double factorOf(double decibels) {
    return Math.pow(10, decibels / PER_DECADE);
  }

  /** {@code +20 dB}, {@code -6 dB}, to a whole one: finer than a fader is set by eye. */
  public static String words(double decibels) {
    long whole = Math.round(decibels);
    return (whole > 0 ? "+" : "") + whole + " dB";
  }
}
