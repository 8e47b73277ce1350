package entracte.print;

import entracte.print.Mark.Path;
import entracte.print.Mark.Point;
import entracte.print.Mark.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes marks as an SVG picture, one millimetre to the unit. */
final class SvgPicture implements Mark.Pen {
  private final Lettering lettering;
  private final List<String> lines = new ArrayList<>();

  private SvgPicture(Lettering lettering) {
    this.lettering = lettering;
  }

  static List<String> lines(
      String title, double width, double height, List<Mark> marks, Lettering lettering) {
    SvgPicture picture = new SvgPicture(lettering);
    picture.lines.add("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
    picture.lines.add(
        format(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\""
                + " viewBox=\"0 0 %s %s\" xml:lang=\"en\">",
            width, height, width, height));
    picture.lines.add("<title>" + escaped(lettering.clean(title)) + "</title>");
    picture.lines.add("<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>");
    marks.forEach(mark -> mark.draw(picture));
    picture.lines.add("</svg>");
    return List.copyOf(picture.lines);
  }

  @Override
  public void words(Words words) {
    if (words.text().isBlank()) {
      return;
    }
    lines.add(
        format(
                "<text x=\"%s\" y=\"%s\" font-size=\"%s\" textLength=\"%s\"",
                words.x(),
                words.baseline(),
                lettering.em(words.face(), words.capital()),
                words.width())
            + " lengthAdjust=\"spacingAndGlyphs\""
            + " font-family=\"'DejaVu Sans Condensed', 'DejaVu Sans', sans-serif\""
            + (words.face() == Face.BOLD ? " font-weight=\"bold\"" : "")
            + (words.white() ? " fill=\"#fff\"" : "")
            + ">"
            + escaped(words.text())
            + "</text>");
  }

  @Override
  public void path(Path path) {
    StringBuilder d = new StringBuilder();
    for (Point p : path.points()) {
      d.append(d.length() == 0 ? "M" : " L").append(format("%s %s", p.x(), p.y()));
    }
    d.append(path.closed() ? " Z" : "");
    String how =
        path.filled()
            ? " fill=\"#000\""
            : format(" fill=\"none\" stroke=\"#000\" stroke-width=\"%s\"", path.width());
    lines.add("<path d=\"" + d + "\"" + how + "/>");
  }

  /** Figures to a thousandth of a millimetre, whatever the language of the machine. */
  private static String format(String form, double... figures) {
    Object[] texts = new Object[figures.length];
    for (int i = 0; i < figures.length; i++) {
      texts[i] = String.format(Locale.ROOT, "%.3f", figures[i]);
    }
    return String.format(form, texts);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
