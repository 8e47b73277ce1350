package entracte.print;

import entracte.print.Mark.Path;
import entracte.print.Mark.Point;
import java.util.ArrayList;
import java.util.List;

/** Sets the pieces of a sheet in letters of one size. */
final class Setter {
  private static final double TITLE = 1.3;
  private static final int TITLE_LINES = 2;
  private static final double GAP = 0.6;
  private static final double LINE_MM = 0.35;
  private static final double BAR = 0.3;

  private final Lettering lettering;
  private final double capital;
  private final double width;
  private final boolean dense;

  /**
   * @param capital the height of a capital letter, in mm
   * @param width of the lines, in mm
   */
  Setter(Lettering lettering, double capital, double width) {
    this(lettering, capital, width, false);
  }

  /**
   * @param dense whether lists of songs take as little room as an eye allows
   */
  Setter(Lettering lettering, double capital, double width, boolean dense) {
    this.lettering = lettering;
    this.capital = capital;
    this.width = width;
    this.dense = dense;
  }

  private double line() {
    return lettering.lineHeight(capital);
  }

  private double gap() {
    return GAP * capital;
  }

  /** What stands at the top of a page, with a line below. */
  Slab title(String text) {
    return title(text, "");
  }

  /**
   * @param tail what tells this page from the sheet's others; it stands even if the text is cut
   */
  Slab title(String text, String tail) {
    boolean fits =
        lettering.wrap(text + tail, Face.BOLD, TITLE * capital, width, 0).size() <= TITLE_LINES;
    double size = fits ? TITLE * capital : capital;
    List<String> lines = lettering.name(text, tail, Face.BOLD, size, width, TITLE_LINES);
    List<Mark> marks = new ArrayList<>(lettering.block(lines, Face.BOLD, 0, 0, size, 0));
    double y = lines.size() * lettering.lineHeight(size) + gap() / 2;
    marks.add(rule(y));
    return Slab.of(y + gap(), marks);
  }

  private Path rule(double y) {
    return new Path(List.of(new Point(0, y), new Point(width, y)), false, LINE_MM);
  }

  Slab heading(String text) {
    List<Slab> lines = new ArrayList<>(List.of(Slab.empty(gap())));
    lines.addAll(lines(text, Face.BOLD, 0, 0));
    return Slab.joined(lines).keeping();
  }

  Slab text(String text) {
    if (dense) {
      return new Setter(lettering, Legibility.LEAST_PART * capital, width).text(text);
    }
    List<Slab> lines = new ArrayList<>(lines(text, Face.PLAIN, 0, 0));
    lines.add(Slab.empty(gap() / 2));
    return Slab.joined(lines);
  }

  /**
   * What stands below a list of songs.
   *
   * @param lacking where to look for what a dense list leaves out
   */
  Slab closing(String text, String lacking) {
    return text(dense ? text + " " + lacking : text);
  }

  /** Bold, with a bar at its left. */
  Slab caution(String text) {
    List<Slab> lines = new ArrayList<>();
    for (Slab line : lines(text, Face.BOLD, 2 * gap(), 0)) {
      List<Mark> marks = new ArrayList<>(line.marks());
      double x = BAR * capital / 2;
      marks.add(
          new Path(List.of(new Point(x, 0), new Point(x, line.height())), false, BAR * capital));
      lines.add(Slab.of(line.height(), marks));
    }
    lines.add(Slab.empty(gap()));
    return Slab.joined(lines);
  }

  /** A box, the number of the step, and what to do with its verb in bold. */
  Slab tick(String number, String text) {
    double box = capital;
    double numbers = number.isEmpty() ? 0 : lettering.width("88", Face.BOLD, capital);
    double own = lettering.width(number, Face.BOLD, capital);
    double left = box + gap() + (number.isEmpty() ? 0 : Math.max(numbers, own) + gap());
    List<Slab> lines = new ArrayList<>(worded(text, left));
    List<Mark> first = new ArrayList<>(List.of(box(lettering.baseline(capital) - box, box)));
    if (!number.isEmpty()) {
      double x = left - gap() - own;
      first.add(lettering.words(number, Face.BOLD, x, lettering.baseline(capital), capital));
    }
    first.addAll(lines.get(0).marks());
    lines.set(0, Slab.of(lines.get(0).height(), first));
    lines.add(Slab.empty(gap() / 2));
    return Slab.joined(lines);
  }

  private List<Slab> worded(String text, double left) {
    int space = text.indexOf(' ');
    String verb = space < 0 ? "" : text.substring(0, space);
    boolean isVerb =
        verb.length() > 2 && verb.chars().allMatch(c -> c >= 'A' && c <= 'Z' || c == ':');
    return isVerb
        ? labelledLines(verb + " ", text.substring(space + 1), left)
        : lines(text, Face.PLAIN, left, 0);
  }

  Slab labelled(String label, List<String> items) {
    List<Slab> lines = new ArrayList<>(List.of(Slab.empty(gap() / 2)));
    lines.addAll(labelledLines(label + ": ", String.join("; ", items) + ".", 0));
    return Slab.joined(lines);
  }

  private List<Slab> labelledLines(String label, String text, double left) {
    String clean = lettering.clean(label);
    double indent = lettering.width(clean, Face.BOLD, capital);
    if (left + indent > width) {
      List<Slab> above = new ArrayList<>(lines(clean.strip(), Face.BOLD, left, 0));
      above.addAll(lines(text, Face.PLAIN, left, 0));
      return above;
    }
    List<Slab> lines = new ArrayList<>(lines(text, Face.PLAIN, left, indent));
    List<Mark> first = new ArrayList<>(lines.get(0).marks());
    first.add(
        0, lettering.words(clean.strip(), Face.BOLD, left, lettering.baseline(capital), capital));
    lines.set(0, Slab.of(lines.get(0).height(), first));
    return lines;
  }

  private List<Slab> lines(String text, Face face, double left, double indent) {
    List<String> lines = lettering.wrap(text, face, capital, width - left, indent);
    List<Slab> slabs = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      double x = left + (i == 0 ? indent : 0);
      Mark words = lettering.words(lines.get(i), face, x, lettering.baseline(capital), capital);
      slabs.add(Slab.of(line(), lines.get(i).isEmpty() ? List.of() : List.of(words)));
    }
    return slabs;
  }

  private static Path box(double top, double side) {
    double edge = LINE_MM / 2;
    double far = side - edge;
    return new Path(
        List.of(
            new Point(edge, top + edge),
            new Point(far, top + edge),
            new Point(far, top + far),
            new Point(edge, top + far)),
        true,
        LINE_MM);
  }

  Slab entry(Scribe.Entry entry) {
    return new EntrySetter(lettering, capital, width, dense).set(entry);
  }

  /** A line across, with its label below. */
  Slab acrossWith(String label) {
    List<Mark> marks = new ArrayList<>(List.of(rule(gap() / 2)));
    List<String> lines = lettering.wrap(label, Face.BOLD, capital, width, 0);
    marks.addAll(lettering.block(lines, Face.BOLD, 0, gap(), capital, 0));
    return Slab.of(gap() + lines.size() * line(), marks).keeping();
  }
}
