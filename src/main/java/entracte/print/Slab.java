package entracte.print;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece of a sheet that stays together, drawn from its own top left corner.
 *
 * @param lines the pieces it may be parted into where it is taller than a page; empty for none
 * @param keeps whether it must not be the last thing on a page: a heading
 */
record Slab(double height, List<Mark> marks, List<Slab> lines, boolean keeps) {
  Slab {
    marks = List.copyOf(marks);
    lines = List.copyOf(lines);
  }

  static Slab of(double height, List<Mark> marks) {
    return new Slab(height, marks, List.of(), false);
  }

  static Slab empty(double height) {
    return of(height, List.of());
  }

  /** Lines below each other as one piece. */
  static Slab joined(List<Slab> lines) {
    List<Mark> marks = new ArrayList<>();
    double y = 0;
    for (Slab line : lines) {
      for (Mark mark : line.marks()) {
        marks.add(mark.shifted(0, y));
      }
      y += line.height();
    }
    return new Slab(y, marks, lines, false);
  }

  Slab keeping() {
    return new Slab(height, marks, lines, true);
  }

  /**
   * Deals slabs out to pages of the given height, in order, as few as may be. A slab that keeps
   * goes over to the next page with what follows it.
   */
  static List<List<Slab>> pages(List<Slab> slabs, double height) {
    List<List<Slab>> pages = new ArrayList<>();
    List<Slab> page = new ArrayList<>();
    double used = 0;
    for (Slab slab : parted(slabs, height)) {
      if (used + slab.height() > height && !page.isEmpty()) {
        List<Slab> over = takeHeadings(page, height - slab.height());
        pages.add(page);
        page = over;
        used = page.stream().mapToDouble(Slab::height).sum();
      }
      page.add(slab);
      used += slab.height();
    }
    pages.add(page);
    return pages;
  }

  /** Parts what has no room on a page together with the headings that must stand above it. */
  private static List<Slab> parted(List<Slab> slabs, double height) {
    List<Slab> all = new ArrayList<>();
    double headings = 0;
    for (Slab slab : slabs) {
      if (headings + slab.height() > height && !slab.lines().isEmpty()) {
        all.addAll(slab.inLines());
      } else {
        all.add(slab);
      }
      headings = slab.keeps() ? headings + slab.height() : 0;
    }
    return all;
  }

  /** Its lines one by one, but neither the first nor the last by itself on a page. */
  private List<Slab> inLines() {
    List<Slab> parts = new ArrayList<>(lines);
    int first = 0;
    while (first < parts.size() && parts.get(first).marks().isEmpty()) {
      first++;
    }
    int last = parts.size() - 1;
    while (last > first && parts.get(last).marks().isEmpty()) {
      last--;
    }
    for (int i = 0; i < last; i++) {
      if (i <= first || i == last - 1) {
        parts.set(i, parts.get(i).keeping());
      }
    }
    return parts;
  }

  /**
   * The headings at the foot of a page, unless there is nothing else on it, or they have no room
   * above what they head.
   */
  private static List<Slab> takeHeadings(List<Slab> page, double room) {
    int from = page.size();
    double used = 0;
    while (from > 0 && page.get(from - 1).keeps()) {
      from--;
      used += page.get(from).height();
    }
    if (used > room) {
      return new ArrayList<>();
    }
    List<Slab> over = new ArrayList<>();
    while (from > 0 && page.size() > from) {
      over.add(page.remove(from));
    }
    return over;
  }
}
