package entracte.stage;

import java.util.ArrayList;
import java.util.List;

/**
 * A screen full of styled cells. A wide character takes two cells, of which the second is empty
 * ({@link #TAIL}).
 */
public final class Frame {
  /** The cell behind a wide character. */
  public static final int TAIL = 0;

  private final int width;
  private final int height;
  private final int[] glyphs;
  private final Style[] styles;

  Frame(int width, int height, int[] glyphs, Style[] styles) {
    this.width = width;
    this.height = height;
    this.glyphs = glyphs.clone();
    this.styles = styles.clone();
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** The character in a cell, a code point; {@link #TAIL} behind a wide one. */
  public int glyph(int x, int y) {
    return glyphs[y * width + x];
  }

  public Style style(int x, int y) {
    return styles[y * width + x];
  }

  /** The rows as text, without blanks at their ends. */
  public List<String> rows() {
    List<String> rows = new ArrayList<>();
    for (int y = 0; y < height; y++) {
      StringBuilder row = new StringBuilder();
      for (int x = 0; x < width; x++) {
        if (glyph(x, y) != TAIL) {
          row.appendCodePoint(glyph(x, y));
        }
      }
      rows.add(row.toString().stripTrailing());
    }
    return rows;
  }
}
