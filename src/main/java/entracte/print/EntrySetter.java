package entracte.print;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets a song of a list: its number large at the left of all its lines, its title, what stands at
 * the right edge, details. Where a list is set densely, so that it needs fewer pages, nothing is
 * larger than it must be, the details are as small as an eye can still read, and extras are left
 * out.
 */
final class EntrySetter {
  /** Heights against those of plain text, densely and not. */
  private static final double NUMBER = 2.4;

  private static final double DENSE_NUMBER = 1.3;
  private static final double TITLE = 1.25;
  private static final double GAP = 0.6;
  private static final double DENSE_GAP = 0.3;

  /** Where the title would be left with less of the line, what stands beside it goes below it. */
  private static final double LEAST_TITLE = 0.45;

  private final Lettering lettering;
  private final boolean dense;
  private final double details;
  private final double width;
  private final double number;
  private final double title;
  private final double gap;

  EntrySetter(Lettering lettering, double capital, double width, boolean dense) {
    this.lettering = lettering;
    this.dense = dense;
    this.details = dense ? Legibility.LEAST_PART * capital : capital;
    this.width = width;
    this.number = (dense ? DENSE_NUMBER : NUMBER) * capital;
    this.title = dense ? capital : TITLE * capital;
    this.gap = (dense ? DENSE_GAP : GAP) * capital;
  }

  Slab set(Scribe.Entry entry) {
    double left = number / 3 + Math.max(bold("88", number), bold(entry.number(), number));
    double right = bold(entry.right(), title);
    double beside = width - left - (right > 0 ? right + title : 0);
    boolean below = beside < LEAST_TITLE * width;
    List<String> titles =
        lettering.wrap(entry.title(), Face.BOLD, title, below ? width - left : beside, 0);
    List<Slab> lines = new ArrayList<>();
    lines.add(first(entry, titles.get(0), left, below ? 0 : right));
    for (String more : titles.subList(1, titles.size())) {
      lines.add(line(more, Face.BOLD, title, left));
    }
    String about = details(entry, below);
    if (!about.isBlank()) {
      for (String each : lettering.wrap(about, Face.PLAIN, details, width - left, 0)) {
        lines.add(line(each, Face.PLAIN, details, left));
      }
    }
    lines.add(Slab.empty(gap));
    return Slab.joined(besideNumber(lines));
  }

  /** The lines that the number hangs down beside, as one piece that no page parts, and the rest. */
  private List<Slab> besideNumber(List<Slab> lines) {
    double high = top() + number + lettering.lineHeight(title) - lettering.baseline(title);
    int count = 0;
    double used = 0;
    while (count < lines.size() && used < high) {
      used += lines.get(count++).height();
    }
    List<Slab> all = new ArrayList<>();
    all.add(Slab.of(Math.max(used, high), Slab.joined(lines.subList(0, count)).marks()));
    all.addAll(lines.subList(count, lines.size()));
    return all;
  }

  /** Where the tops of the first line's capitals are. */
  private double top() {
    return lettering.baseline(title) - title;
  }

  private double bold(String text, double size) {
    return lettering.width(lettering.clean(text), Face.BOLD, size);
  }

  private String details(Scribe.Entry entry, boolean below) {
    String details = dense ? entry.details() : entry.everything();
    return below && !details.isEmpty() && !entry.right().isEmpty()
        ? entry.right() + ", " + details
        : (below ? entry.right() : "") + details;
  }

  /** Title and right edge on one baseline, the number as high as they and hanging below. */
  private Slab first(Scribe.Entry entry, String words, double left, double right) {
    double baseline = lettering.baseline(title);
    double x = left - number / 3 - bold(entry.number(), number);
    List<Mark> marks = new ArrayList<>();
    marks.add(lettering.words(entry.number(), Face.BOLD, x, top() + number, number));
    marks.add(lettering.words(words, Face.BOLD, left, baseline, title));
    if (right > 0) {
      marks.add(lettering.words(entry.right(), Face.BOLD, width - right, baseline, title));
    }
    return Slab.of(lettering.lineHeight(title), marks);
  }

  private Slab line(String text, Face face, double size, double left) {
    Mark words = lettering.words(text, face, left, lettering.baseline(size), size);
    return Slab.of(lettering.lineHeight(size), List.of(words));
  }
}
