package entracte.print;

import entracte.print.Mark.Path;
import entracte.print.Mark.Point;
import entracte.print.Mark.Words;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Writes pages as a PDF with its font inside, a title, a language and bookmarks. Neither time nor
 * chance goes into the file, so the same pages make the same bytes.
 */
final class PdfBook {
  private static final double POINTS_PER_MM = 72 / 25.4;

  private final PDDocument document;
  private final Lettering lettering;
  private final Map<Face, PDType0Font> fonts = new EnumMap<>(Face.class);

  private PdfBook(PDDocument document, Lettering lettering) {
    this.document = document;
    this.lettering = lettering;
  }

  static byte[] write(String title, String subject, List<Page> pages, Lettering lettering) {
    try (PDDocument document = new PDDocument();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      PdfBook book = new PdfBook(document, lettering);
      book.describe(lettering.clean(title), subject);
      for (Page page : pages) {
        book.draw(page);
      }
      book.bookmark(pages);
      document.setDocumentId(sum(title, pages));
      document.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A file's identity, made of its sheets instead of the time. */
  private static long sum(String title, List<Page> pages) {
    CRC32 sum = new CRC32();
    sum.update(title.getBytes(StandardCharsets.UTF_8));
    for (Page page : pages) {
      sum.update(page.title().getBytes(StandardCharsets.UTF_8));
      sum.update(page.marks().size());
    }
    return sum.getValue();
  }

  private void describe(String title, String subject) throws IOException {
    PDDocumentInformation about = new PDDocumentInformation();
    about.setTitle(title);
    about.setSubject(subject);
    about.setCreator("entracte");
    document.setDocumentInformation(about);
    document.getDocumentCatalog().setLanguage("en");
    document.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
    PDViewerPreferences viewer = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
    viewer.setDisplayDocTitle(true);
    document.getDocumentCatalog().setViewerPreferences(viewer);
    for (Face face : Face.values()) {
      fonts.put(face, PDType0Font.load(document, lettering.font(face).parse(), true));
    }
  }

  private void draw(Page page) throws IOException {
    PDRectangle size =
        new PDRectangle(points(page.format().width()), points(page.format().height()));
    PDPage sheet = new PDPage(size);
    document.addPage(sheet);
    try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
      PdfPen pen = new PdfPen(content, page.format().height());
      page.marks().forEach(mark -> mark.draw(pen));
    }
  }

  private void bookmark(List<Page> pages) {
    PDDocumentOutline outline = new PDDocumentOutline();
    document.getDocumentCatalog().setDocumentOutline(outline);
    Map<Part, PDOutlineItem> parents = new EnumMap<>(Part.class);
    for (int i = 0; i < pages.size(); i++) {
      Page page = pages.get(i);
      PDPage target = document.getPage(i);
      PDOutlineItem parent = parents.get(page.part());
      if (parent == null) {
        parent = item(page.part().title(), target);
        outline.addLast(parent);
        parents.put(page.part(), parent);
      }
      if (page.first()) {
        parent.addLast(item(page.title(), target));
      }
    }
  }

  private static PDOutlineItem item(String title, PDPage target) {
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(title);
    item.setDestination(target);
    return item;
  }

  private static float points(double mm) {
    return (float) (mm * POINTS_PER_MM);
  }

  /** Draws on one page; a PDF counts from the bottom left corner. */
  private final class PdfPen implements Mark.Pen {
    private final PDPageContentStream content;
    private final double height;

    PdfPen(PDPageContentStream content, double height) {
      this.content = content;
      this.height = height;
    }

    @Override
    public void words(Words words) {
      try {
        content.beginText();
        content.setNonStrokingColor(words.white() ? 1f : 0f);
        double em = lettering.em(words.face(), words.capital());
        content.setFont(fonts.get(words.face()), points(em));
        content.newLineAtOffset(points(words.x()), points(height - words.baseline()));
        content.showText(Visual.order(words.text()));
        content.endText();
        content.setNonStrokingColor(0f);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public void path(Path path) {
      try {
        content.setLineWidth(points(path.width()));
        for (int i = 0; i < path.points().size(); i++) {
          Point p = path.points().get(i);
          if (i == 0) {
            content.moveTo(points(p.x()), points(height - p.y()));
          } else {
            content.lineTo(points(p.x()), points(height - p.y()));
          }
        }
        finish(path);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    private void finish(Path path) throws IOException {
      if (path.closed()) {
        content.closePath();
      }
      if (path.filled()) {
        content.fill();
      } else {
        content.stroke();
      }
    }
  }
}
