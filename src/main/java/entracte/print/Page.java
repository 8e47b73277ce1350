package entracte.print;

import java.util.List;

/**
 * A page ready to be drawn.
 *
 * @param part what it belongs to, for the bookmarks
 * @param title of its sheet
 * @param first whether its sheet begins here
 */
record Page(Paper.Format format, Part part, String title, boolean first, List<Mark> marks) {
  Page {
    marks = List.copyOf(marks);
  }

  /** The height of its smallest capitals, in mm. */
  double smallest() {
    return marks.stream().mapToDouble(Mark::smallest).min().orElse(Double.POSITIVE_INFINITY);
  }
}
