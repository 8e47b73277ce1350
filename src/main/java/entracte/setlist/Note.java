package entracte.setlist;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A note by its name: {@code A4}, {@code F#3}, {@code Bb2}. C4 is the middle C of a piano, and the
 * octave's figure changes at C.
 *
 * @param number as MIDI counts the keys: 69 is A4
 */
public record Note(String name, int number) {
  /** The A above middle C, by which instruments are tuned to each other. */
  public static final Note A4 = new Note("A4", 69);

  private static final Pattern WRITTEN = Pattern.compile("([A-Ga-g])([#b]?)(-?\\d)");
  private static final int SEMITONES = 12;

  /** Semitones from C to each letter, from A on. */
  private static final int[] LETTERS = {9, 11, 0, 2, 4, 5, 7};

  /** Reads a note's name; empty if it is none. */
  public static Optional<Note> parse(String text) {
    Matcher written = WRITTEN.matcher(text.strip());
    if (!written.matches()) {
      return Optional.empty();
    }
    char letter = Character.toUpperCase(written.group(1).charAt(0));
    int sign = written.group(2).isEmpty() ? 0 : written.group(2).equals("#") ? 1 : -1;
    int octave = Integer.parseInt(written.group(3));
    int number = SEMITONES * (octave + 1) + LETTERS[letter - 'A'] + sign;
    return Optional.of(new Note(letter + written.group(2) + octave, number));
  }

  /** Its frequency in twelve equal steps to the octave, if A4 has {@code a4Hz}. */
  public double hertz(double a4Hz) {
    return a4Hz * Math.pow(2, (number - A4.number) / (double) SEMITONES);
  }
}
