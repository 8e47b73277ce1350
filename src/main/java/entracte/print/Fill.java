package entracte.print;

import java.lang.Character.UnicodeScript;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.regex.Pattern;

/** Fills lines of a set width with the words of a text. */
public final class Fill {
  /** A figure stays with the word before it and with its unit: osc 1, to 6.5, 30 cm. */
  private static final Pattern GAP = Pattern.compile(" +(?!\\d|%|cm\\b|s\\b|min\\b|Hz\\b|dB\\b)");

  private static final Pattern SPACES = Pattern.compile("\\s+");

  /** A little more than the sums of many widths can be wrong by. */
  private static final double ROUNDING = 1e-6;

  private final double width;
  private final String rest;
  private final IntToDoubleFunction measure;
  private final List<String> lines = new ArrayList<>();
  private final StringBuilder line;
  private double used;
  private boolean empty = true;

  /** Whether something stands on the line already that needs no space after it. */
  private boolean glued;

  private Fill(double width, String first, String rest, IntToDoubleFunction measure) {
    this.width = width + ROUNDING;
    this.rest = rest;
    this.measure = measure;
    this.line = new StringBuilder(first);
    this.used = length(first);
  }

  /**
   * The lines of {@code text}, none wider than {@code width} cells. A word that is wider than a
   * whole line is cut.
   *
   * @param first what the first line begins with
   * @param rest what every further line begins with
   */
  public static List<String> lines(String text, int width, String first, String rest) {
    if (width <= Math.max(width(first), width(rest)) + 1) {
      throw new IllegalArgumentException("no room for words: " + width);
    }
    return new Fill(width, first, rest, Fill::width).all(text);
  }

  /**
   * The lines of {@code text}, measured letter by letter.
   *
   * @param indent by how much the first line is shorter; a first word that has no room there goes
   *     to the second line, and the first is empty
   */
  static List<String> lines(String text, double width, double indent, IntToDoubleFunction measure) {
    Fill fill = new Fill(width, "", "", measure);
    fill.used = indent;
    fill.empty = indent == 0;
    fill.glued = !fill.empty;
    return fill.all(text);
  }

  private List<String> all(String text) {
    for (String words : GAP.split(SPACES.matcher(text.strip()).replaceAll(" "))) {
      // What is wider than a line is parted between its words, before any word is cut.
      boolean fits = length(rest) + length(words) <= width;
      for (String word : fits ? new String[] {words} : words.split(" ")) {
        add(word);
      }
    }
    end();
    return List.copyOf(lines);
  }

  /** How many cells of a typewriter or a terminal the text takes. */
  public static int width(String text) {
    return text.codePoints().map(Fill::width).sum();
  }

  /** Two for the scripts that fill a square, none for a mark that sits on another letter. */
  private static int width(int codePoint) {
    if (Character.getType(codePoint) == Character.NON_SPACING_MARK) {
      return 0;
    }
    return switch (UnicodeScript.of(codePoint)) {
      case HAN, HIRAGANA, KATAKANA, HANGUL -> 2;
      default -> 1;
    };
  }

  private double length(String text) {
    return text.codePoints().mapToDouble(measure::applyAsDouble).sum();
  }

  private void add(String word) {
    double space = glued ? 0 : measure.applyAsDouble(' ');
    if (!empty && used + space + length(word) > width) {
      end();
    }
    if (!empty && !glued) {
      put(' ');
    }
    word.codePoints().forEach(this::put);
    empty = false;
    glued = false;
  }

  private void put(int codePoint) {
    double wide = measure.applyAsDouble(codePoint);
    if (used + wide > width && !line.toString().equals(rest)) {
      end();
    }
    line.appendCodePoint(codePoint);
    used += wide;
  }

  private void end() {
    lines.add(line.toString().stripTrailing());
    line.setLength(0);
    line.append(rest);
    used = length(rest);
    empty = true;
    glued = false;
  }
}
