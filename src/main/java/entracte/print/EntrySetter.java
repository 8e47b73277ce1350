package entracte.print;

import java.util.ArrayList;
import java.util.List;

/** Sets a song of a list: its number large, its title, what stands at the right edge, details. */
final class EntrySetter {
  /** Heights against those of plain text. */
  private static final double NUMBER = 1.6;

  private static final double TITLE = 1.25;
  private static final double GAP = 0.6;

  /** Where the title would be left with less of the line, what stands beside it goes below it. */
  private static final double LEAST_TITLE = 0.45;

  private final Lettering lettering;
  private final double capital;
  private final double width;
  private final double number;
  private final double title;
  private final double gap;

  EntrySetter(Lettering lettering, double capital, double width) {
    this.lettering = lettering;
    this.capital = capital;
    this.width = width;
    this.number = NUMBER * capital;
    this.title = TITLE * capital;
    this.gap = GAP * capital;
  }

  Slab set(Scribe.Entry entry) {
    double left = gap + Math.max(bold("88", number), bold(entry.number(), number));
    double right = bold(entry.right(), title);
    double beside = width - left - (right > 0 ? right + 2 * gap : 0);
    boolean below = beside < LEAST_TITLE * width;
    List<String> titles =
        lettering.wrap(entry.title(), Face.BOLD, title, below ? width - left : beside, 0);
    List<Slab> lines = new ArrayList<>();
    lines.add(first(entry, titles.get(0), left, below ? 0 : right));
    for (String more : titles.subList(1, titles.size())) {
      lines.add(line(more, Face.BOLD, title, left));
    }
    String details = details(entry, below);
    if (!details.isBlank()) {
      for (String each : lettering.wrap(details, Face.PLAIN, capital, width - left, 0)) {
        lines.add(line(each, Face.PLAIN, capital, left));
      }
    }
    lines.add(Slab.empty(gap));
    return Slab.joined(lines);
  }

  private double bold(String text, double size) {
    return lettering.width(lettering.clean(text), Face.BOLD, size);
  }

  private static String details(Scribe.Entry entry, boolean below) {
    return below && !entry.details().isEmpty() && !entry.right().isEmpty()
        ? entry.right() + ", " + entry.details()
        : (below ? entry.right() : "") + entry.details();
  }

  /** Number, title and right edge on one baseline. */
  private Slab first(Scribe.Entry entry, String words, double left, double right) {
    double baseline = lettering.baseline(number);
    double x = left - gap - bold(entry.number(), number);
    List<Mark> marks = new ArrayList<>();
    marks.add(lettering.words(entry.number(), Face.BOLD, x, baseline, number));
    marks.add(lettering.words(words, Face.BOLD, left, baseline, title));
    if (right > 0) {
      marks.add(lettering.words(entry.right(), Face.BOLD, width - right, baseline, title));
    }
    double drop = baseline - lettering.baseline(title);
    return Slab.of(drop + lettering.lineHeight(title), marks);
  }

  private Slab line(String text, Face face, double size, double left) {
    Mark words = lettering.words(text, face, left, lettering.baseline(size), size);
    return Slab.of(lettering.lineHeight(size), List.of(words));
  }
}
