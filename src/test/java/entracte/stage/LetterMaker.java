package entracte.stage;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Makes the tables of large letters from the outlines of the font that the sheets are printed in.
 * Run {@code main} when the font or the sizes change; a test holds the tables to it.
 */
final class LetterMaker {
  private static final String FONT = "/entracte/print/letters/DejaVuSansCondensed-Bold.ttf";

  /** Height of a capital, of the space above the baseline, and of that below, in dots. */
  private static final int[][] SIZES = {{7, 9, 3}, {12, 15, 5}};

  /** Latin, Greek, Cyrillic, Armenian, Georgian, punctuation, and the signs of music. */
  private static final int[][] RANGES = {
    {0x21, 0x7E},
    {0xA1, 0x24F},
    {0x370, 0x52F},
    {0x531, 0x58A},
    {0x10A0, 0x10FF},
    {0x1E00, 0x1FFF},
    {0x2010, 0x2027},
    {0x2030, 0x205E},
    {0x2669, 0x266F},
  };

  /** A dot is set if this many of its 16 samples lie inside. */
  private static final int INSIDE = 7;

  private LetterMaker() {}

  public static void main(String[] args) throws IOException {
    for (int[] size : SIZES) {
      Files.write(Path.of("src/main/resources/entracte/stage", name(size)), table(size));
    }
  }

  static int sizes() {
    return SIZES.length;
  }

  static String name(int size) {
    return name(SIZES[size]);
  }

  private static String name(int[] size) {
    return "letters-" + size[0] + ".txt";
  }

  static List<String> table(int size) throws IOException {
    return table(SIZES[size]);
  }

  private static List<String> table(int[] size) throws IOException {
    try (InputStream in = LetterMaker.class.getResourceAsStream(FONT);
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
      CmapLookup lookup = font.getUnicodeCmapLookup();
      double capital = height(font, lookup.getGlyphId('H'));
      double scale = size[0] / capital;
      List<String> lines = new ArrayList<>();
      lines.add("rows " + (size[1] + size[2]) + " blank " + Math.round(size[0] * 0.45));
      for (int[] range : RANGES) {
        for (int point = range[0]; point <= range[1]; point++) {
          int glyph = lookup.getGlyphId(point);
          if (glyph != 0) {
            lines.add(line(font, glyph, point, scale, size));
          }
        }
      }
      return lines;
    }
  }

  private static double height(TrueTypeFont font, int glyph) throws IOException {
    return font.getGlyph().getGlyph(glyph).getPath().getBounds2D().getHeight();
  }

  private static String line(TrueTypeFont font, int glyph, int point, double scale, int[] size)
      throws IOException {
    GlyphData data = font.getGlyph().getGlyph(glyph);
    Path2D outline = data == null ? new Path2D.Double() : new Path2D.Double(data.getPath());
    outline.transform(new AffineTransform(scale, 0, 0, -scale, 0, size[1]));
    int width = Math.max(1, (int) Math.round(font.getAdvanceWidth(glyph) * scale));
    StringBuilder line = new StringBuilder(Integer.toHexString(point) + " " + width);
    for (int y = 0; y < size[1] + size[2]; y++) {
      int dots = 0;
      for (int x = 0; x < width; x++) {
        dots = dots << 1 | (samples(outline, x, y) >= INSIDE ? 1 : 0);
      }
      line.append(' ').append(Integer.toHexString(dots));
    }
    return line.toString();
  }

  private static int samples(Path2D outline, int x, int y) {
    int inside = 0;
    for (int i = 0; i < 16; i++) {
      inside += outline.contains(x + (i % 4 + 0.5) / 4, y + (i / 4 + 0.5) / 4) ? 1 : 0;
    }
    return inside;
  }
}
