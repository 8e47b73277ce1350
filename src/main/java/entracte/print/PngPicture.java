package entracte.print;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * Makes dots of a page. It is drawn from its PDF, whose letters are outlines in the file, so that
 * it looks the same on machines that have no fonts.
 */
final class PngPicture {
  /** Fine enough to be read on a tablet held at arm's length. */
  static final int DOTS_PER_INCH = 150;

  private static final double MM_PER_INCH = 25.4;

  private PngPicture() {}

  /** How many dots a length takes. */
  static long dots(double mm) {
    return Math.round(mm / MM_PER_INCH * DOTS_PER_INCH);
  }

  static byte[] bytes(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf);
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      BufferedImage image =
          new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH, ImageType.GRAY);
      ImageIO.write(image, "png", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
