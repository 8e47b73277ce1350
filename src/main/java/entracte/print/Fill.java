package entracte.print;

import java.lang.Character.UnicodeScript;
import java.util.ArrayList;
import java.util.List;

/** Fills lines of a set width with the words of a text. */
public final class Fill {
  /** A figure stays with the word before it and with its unit: osc 1, to 6.5, 30 cm. */
  private static final String GAP = "\\s+(?!\\d|cm\\b|s\\b|min\\b)";

  private final int width;
  private final String rest;
  private final List<String> lines = new ArrayList<>();
  private final StringBuilder line;
  private int used;
  private boolean empty = true;

  private Fill(int width, String first, String rest) {
    this.width = width;
    this.rest = rest;
    this.line = new StringBuilder(first);
    this.used = width(first);
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
    Fill fill = new Fill(width, first, rest);
    for (String word : text.strip().replaceAll("\\s+", " ").split(GAP)) {
      fill.add(word);
    }
    fill.end();
    return List.copyOf(fill.lines);
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

  private void add(String word) {
    if (!empty && used + 1 + width(word) > width) {
      end();
    }
    if (!empty) {
      put(' ');
    }
    word.codePoints().forEach(this::put);
    empty = false;
  }

  private void put(int codePoint) {
    if (used + width(codePoint) > width) {
      end();
    }
    line.appendCodePoint(codePoint);
    used += width(codePoint);
  }

  private void end() {
    lines.add(line.toString().stripTrailing());
    line.setLength(0);
    line.append(rest);
    used = width(rest);
    empty = true;
  }
}
