package entracte.setlist;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How far one pitch lies from another, as a musician writes it: {@code fifth}, {@code pure fifth},
 * {@code 7 semitones}, {@code 702 cents}, {@code 3:2}. A named one is tempered, as keyboards are
 * (all semitones alike), unless it is called pure (the ratio of small whole numbers, which does not
 * beat).
 *
 * @param words as it is said, with its article where it has one
 * @param cents a hundredth of a tempered semitone each
 * @param unit what it is written in
 */
public record Distance(String words, double cents, Unit unit) {
  /** What it is written in. Semitones are a name for so many cents. */
  public enum Unit {
    NAME,
    CENTS,
    RATIO
  }

  private static final double CENTS_PER_OCTAVE = 1200;
  private static final double CENTS_PER_SEMITONE = 100;
  private static final Pattern FIGURE =
      Pattern.compile("(\\d{1,4}(?:\\.\\d{1,6})?) ?(semitones?|cents?)");
  private static final Pattern RATIO = Pattern.compile("(\\d{1,4}) ?: ?(\\d{1,4})");

  /** Its ratio is of no small numbers, so nobody should call it pure to an ear. */
  private static final String BEATING = "tritone";

  /** A named interval, with the ratio of its pure form. */
  private record Named(String name, int semitones, int high, int low) {}

  /** The ratios are those of five-limit just intonation. */
  private static final List<Named> NAMED =
      List.of(
          new Named("unison", 0, 1, 1),
          new Named("minor second", 1, 16, 15),
          new Named("major second", 2, 9, 8),
          new Named("minor third", 3, 6, 5),
          new Named("major third", 4, 5, 4),
          new Named("fourth", 5, 4, 3),
          new Named("tritone", 6, 45, 32),
          new Named("fifth", 7, 3, 2),
          new Named("minor sixth", 8, 8, 5),
          new Named("major sixth", 9, 5, 3),
          new Named("minor seventh", 10, 9, 5),
          new Named("major seventh", 11, 15, 8),
          new Named("octave", 12, 2, 1),
          new Named("minor tenth", 15, 12, 5),
          new Named("major tenth", 16, 5, 2),
          new Named("twelfth", 19, 3, 1),
          new Named("two octaves", 24, 4, 1),
          new Named("three octaves", 36, 8, 1));

  /** The names that are known. */
  public static List<String> names() {
    return NAMED.stream().map(Named::name).toList();
  }

  /** Reads a distance; empty if it is none. */
  public static Optional<Distance> parse(String text) {
    String plain = text.strip().replaceFirst("^an? ", "");
    boolean pure = plain.startsWith("pure ");
    String name = plain.replaceFirst("^(?:pure|tempered) ", "").strip();
    return Stream.of(named(name, pure), figure(plain), ratio(plain))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<Distance> named(String name, boolean pure) {
    return NAMED.stream()
        .filter(each -> each.name().equals(name))
        .map(
            each -> pure ? new Distance(words(each, true), cents(each), Unit.NAME) : tempered(each))
        .findFirst();
  }

  private static Distance tempered(Named each) {
    return new Distance(words(each, false), CENTS_PER_SEMITONE * each.semitones(), Unit.NAME);
  }

  private static double cents(Named each) {
    return centsOf((double) each.high() / each.low());
  }

  /** Octaves are the same both ways, so nothing is said of them. */
  private static String words(Named each, boolean pure) {
    boolean same = each.semitones() % 12 == 0;
    String article = each.name().endsWith("octaves") ? "" : article(each.name());
    if (pure && each.name().equals(BEATING)) {
      return "a tritone of " + each.high() + " to " + each.low();
    }
    return same ? article + each.name() : "a " + (pure ? "pure " : "tempered ") + each.name();
  }

  private static String article(String name) {
    return name.startsWith("octave") ? "an " : "a ";
  }

  private static Optional<Distance> figure(String text) {
    Matcher written = FIGURE.matcher(text);
    if (!written.matches()) {
      return Optional.empty();
    }
    boolean semitones = written.group(2).startsWith("semitone");
    double each = semitones ? CENTS_PER_SEMITONE : 1;
    Unit unit = semitones ? Unit.NAME : Unit.CENTS;
    return Optional.of(new Distance(text, each * Double.parseDouble(written.group(1)), unit));
  }

  private static Optional<Distance> ratio(String text) {
    Matcher written = RATIO.matcher(text);
    if (!written.matches()) {
      return Optional.empty();
    }
    int high = Integer.parseInt(written.group(1));
    int low = Integer.parseInt(written.group(2));
    return low < 1 || high < low
        ? Optional.empty()
        : Optional.of(
            new Distance(
                "the ratio " + high + " to " + low, centsOf((double) high / low), Unit.RATIO));
  }

  /** The cents of a ratio: 1200 for an octave. */
  public static double centsOf(double ratio) {
    return CENTS_PER_OCTAVE * Math.log(ratio) / Math.log(2);
  }

  /** The ratio of so many cents: 2 for 1200. */
  public static double ratioOf(double cents) {
    return Math.pow(2, cents / CENTS_PER_OCTAVE);
  }
}
