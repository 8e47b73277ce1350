package entracte.stage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A frame in the making: text goes where it is put, and what does not fit is cut. */
final class Canvas {
  private static final int LAST_OF_THE_FIRST_PLANE = 0xFFFF;

  private final int width;
  private final int height;
  private final int[] glyphs;
  private final Style[] styles;

  Canvas(int width, int height) {
    this.width = width;
    this.height = height;
    glyphs = new int[width * height];
    styles = new Style[width * height];
    Arrays.fill(glyphs, ' ');
    Arrays.fill(styles, Style.TEXT);
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** Writes from {@code x} on, up to the right edge. */
  void put(int x, int y, String text, Style style) {
    if (y < 0 || y >= height) {
      return;
    }
    int at = x;
    for (int point : text.codePoints().map(Canvas::printable).toArray()) {
      int cells = Cells.of(point);
      if (cells == 0 || at + cells > width) {
        continue;
      }
      set(at, y, point, style);
      if (cells == 2) {
        set(at + 1, y, Frame.TAIL, style);
      }
      at += cells;
    }
  }

  void putRight(int y, String text, Style style) {
    put(Math.max(0, width - Cells.of(text)), y, text, style);
  }

  /** Fills a row from {@code x} on, so that a mark reaches the edge. */
  void bar(int y, String text, Style style) {
    put(0, y, text + " ".repeat(Math.max(0, width - Cells.of(text))), style);
  }

  /** Terminals write what is beyond the first plane as question marks, at an unknown width. */
  private static int printable(int point) {
    return Character.isISOControl(point) || point > LAST_OF_THE_FIRST_PLANE ? '?' : point;
  }

  private void set(int x, int y, int glyph, Style style) {
    if (x >= 0) {
      glyphs[y * width + x] = glyph;
      styles[y * width + x] = style;
    }
  }

  Frame frame() {
    return new Frame(width, height, glyphs, styles);
  }

  /** Breaks text at blanks into lines of at most {@code cells}; a longer word is cut. */
  static List<String> wrap(String text, int cells) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (Cells.of(longer) <= cells) {
        line = longer;
      } else {
        if (!line.isEmpty()) {
          lines.add(line);
        }
        line = Cells.cut(word, cells);
      }
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }
}
