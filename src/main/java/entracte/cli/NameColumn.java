package entracte.cli;

import entracte.print.Fill;
import java.util.stream.Stream;

/**
 * A column of names in a table. It is as wide as the longest name, up to a limit; a name beyond
 * that is cut.
 *
 * @param width in the cells of a terminal
 */
record NameColumn(int width) {
  private static final String CUT = "..";

  /** The column for all {@code names}, from {@code least} to {@code most} cells wide. */
  static NameColumn of(Stream<String> names, int least, int most) {
    int longest = names.mapToInt(Fill::width).max().orElse(0);
    return new NameColumn(Math.max(least, Math.min(most, longest)));
  }

  /** The name with blanks behind it up to the next column. */
  String cell(String name) {
    String shown =
        Fill.width(name) <= width
            ? name
            : Fill.lines(name, width - CUT.length(), "", "").get(0) + CUT;
    return shown + " ".repeat(width - Fill.width(shown));
  }
}
