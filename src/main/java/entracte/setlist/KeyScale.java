package entracte.setlist;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How far the pitch goes from one key to the next one: {@code quarter tones}, {@code 50 cents},
 * {@code 24 per octave}.
 *
 * @param cents from key to key; 100 on an ordinary keyboard
 */
public record KeyScale(double cents) {
  /** How it is written, for advice. */
  public static final String FORM =
      "Write it like \"quarter tones\", \"50 cents\" or \"24 per octave\".";

  private static final double CENTS_PER_OCTAVE = 1200;
  private static final Pattern CENTS = Pattern.compile("(\\d{1,4}(?:\\.\\d{1,6})?) ?cents?");
  private static final Pattern STEPS = Pattern.compile("(\\d{1,4}) ?(?:per|to the) octave");

  /** Reads a scale; empty if it is none. */
  public static Optional<KeyScale> parse(String text) {
    String plain = text.strip();
    Matcher cents = CENTS.matcher(plain);
    Matcher steps = STEPS.matcher(plain);
    double each =
        switch (plain) {
          case "semitones" -> 100;
          case "quarter tones" -> 50;
          case "third tones" -> 200 / 3.0;
          default ->
              cents.matches()
                  ? Double.parseDouble(cents.group(1))
                  : steps.matches() ? CENTS_PER_OCTAVE / Integer.parseInt(steps.group(1)) : 0;
        };
    return each > 0 && each <= CENTS_PER_OCTAVE
        ? Optional.of(new KeyScale(each))
        : Optional.empty();
  }
}
