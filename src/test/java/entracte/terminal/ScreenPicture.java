package entracte.terminal;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;

/**
 * Draws a screen that was caught from a running program, colours and all, for the documents: {@code
 * main} takes a font of letters that are all equally wide, the caught screen and the picture to
 * write. A screen is caught as text with the escape sequences of ECMA-48 (SGR) in it.
 */
final class ScreenPicture {
  private static final int CELL_WIDTH = 9;
  private static final int CELL_HEIGHT = 18;
  private static final int BASELINE = 14;
  private static final double EM = 15;
  private static final int MARGIN = 12;
  private static final Pattern PIECE = Pattern.compile("\u001B\\[([\\d;]*)m|([^\u001B])");

  private final Graphics2D graphics;
  private final TrueTypeFont font;
  private Color ink = Color.WHITE;
  private Color ground = Color.BLACK;
  private boolean turned;

  private ScreenPicture(Graphics2D graphics, TrueTypeFont font) {
    this.graphics = graphics;
    this.font = font;
  }

  public static void main(String[] args) throws IOException {
    try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBufferedFile(args[0]))) {
      ImageIO.write(
          of(Files.readAllLines(Path.of(args[1])), font), "png", Path.of(args[2]).toFile());
    }
  }

  private static BufferedImage of(List<String> rows, TrueTypeFont font) throws IOException {
    int columns = rows.stream().mapToInt(ScreenPicture::columns).max().orElse(0);
    int width = columns * CELL_WIDTH + 2 * MARGIN;
    int height = rows.size() * CELL_HEIGHT + 2 * MARGIN;
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    ScreenPicture picture = new ScreenPicture(graphics, font);
    for (int y = 0; y < rows.size(); y++) {
      picture.row(rows.get(y), MARGIN + y * CELL_HEIGHT);
    }
    graphics.dispose();
    return image;
  }

  private static int columns(String row) {
    return (int) PIECE.matcher(row).results().filter(piece -> piece.group(2) != null).count();
  }

  private void row(String row, int top) throws IOException {
    int x = MARGIN;
    Matcher piece = PIECE.matcher(row);
    while (piece.find()) {
      if (piece.group(2) == null) {
        style(piece.group(1).split(";"));
      } else {
        cell(piece.group(2).codePointAt(0), x, top);
        x += CELL_WIDTH;
      }
    }
  }

  /** Bold is told by its brighter ink alone. */
  private void style(String[] codes) {
    int i = 0;
    while (i < codes.length) {
      switch (codes[i]) {
        case "", "0" -> {
          turned = false;
          ink = Color.WHITE;
          ground = Color.BLACK;
        }
        case "7" -> turned = true;
        case "38" -> ink = colour(codes, i + 2);
        case "48" -> ground = colour(codes, i + 2);
        default -> {}
      }
      i += codes[i].equals("38") || codes[i].equals("48") ? 5 : 1;
    }
  }

  private static Color colour(String[] codes, int from) {
    return new Color(
        Integer.parseInt(codes[from]),
        Integer.parseInt(codes[from + 1]),
        Integer.parseInt(codes[from + 2]));
  }

  private void cell(int codePoint, int x, int top) throws IOException {
    graphics.setColor(turned ? ink : ground);
    graphics.fillRect(x, top, CELL_WIDTH, CELL_HEIGHT);
    graphics.setColor(turned ? ground : ink);
    switch (codePoint) {
      case ' ' -> {}
      case '█' -> graphics.fillRect(x, top, CELL_WIDTH, CELL_HEIGHT);
      case '▀' -> graphics.fillRect(x, top, CELL_WIDTH, CELL_HEIGHT / 2);
      case '▄' -> graphics.fillRect(x, top + CELL_HEIGHT / 2, CELL_WIDTH, CELL_HEIGHT / 2);
      default -> graphics.fill(outline(codePoint, x, top + BASELINE));
    }
  }

  private Shape outline(int codePoint, int x, int baseline) throws IOException {
    int glyph = font.getUnicodeCmapLookup().getGlyphId(codePoint);
    GeneralPath path = font.getGlyph().getGlyph(glyph).getPath();
    double scale = EM / font.getUnitsPerEm();
    AffineTransform place = new AffineTransform(scale, 0, 0, -scale, x, baseline);
    return place.createTransformedShape(path);
  }
}
