package entracte.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * One face of the embedded font: its outlines, and the measures of its letters in parts of an em.
 */
final class FontFile {
  private static final int PLANE = 1 << 16;

  private final byte[] bytes;
  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;
  private final double capital;
  private final float[] widths = new float[PLANE];

  FontFile(Face face) {
    try (InputStream in = FontFile.class.getResourceAsStream(face.resource())) {
      if (in == null) {
        throw new IllegalStateException("the program was built without " + face.resource());
      }
      bytes = in.readAllBytes();
      font = parse();
      glyphs = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
      capital = top('H') / unitsPerEm;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The font once more, for a file that will close it. Ligatures are off: widths must add up. */
  TrueTypeFont parse() throws IOException {
    TrueTypeFont parsed = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
    parsed.setEnableGsub(false);
    return parsed;
  }

  private double top(int codePoint) throws IOException {
    return font.getGlyph().getGlyph(glyphs.getGlyphId(codePoint)).getBoundingBox().getUpperRightY();
  }

  boolean has(int codePoint) {
    return glyphs.getGlyphId(codePoint) != 0;
  }

  /** The height of a capital letter in em. */
  double capital() {
    return capital;
  }

  /** How far a letter moves the next one, in em. */
  double width(int codePoint) {
    if (codePoint >= PLANE) {
      return advance(codePoint);
    }
    if (widths[codePoint] == 0) {
      widths[codePoint] = (float) advance(codePoint);
    }
    return widths[codePoint];
  }

  private double advance(int codePoint) {
    try {
      return font.getAdvanceWidth(glyphs.getGlyphId(codePoint)) / unitsPerEm;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
