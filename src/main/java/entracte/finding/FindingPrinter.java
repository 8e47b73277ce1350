package entracte.finding;

import java.util.Comparator;
import java.util.List;

/**
 * Findings as a terminal shows them, in the order of the files:
 *
 * <pre>
 * night/set.yaml:3:6: error: "40 sec" is no time
 *   gap: 40 sec
 *        ^
 *   Write it like 40 s, 2:30 or 1 min.
 * </pre>
 *
 * <p>A finding about a whole file has no line to show.
 */
public final class FindingPrinter {
  /** More than anyone mends before checking again. */
  private static final int MOST = 100;

  private static final String INDENT = "  ";

  private static final Comparator<Finding> BY_PLACE =
      Comparator.comparing((Finding f) -> f.place().file())
          .thenComparingInt(f -> f.place().line())
          .thenComparingInt(f -> f.place().column())
          .thenComparing(Finding::severity)
          .thenComparing(Finding::message);

  private FindingPrinter() {}

  /**
   * The text of the findings, each line ended; the same finding is printed once. Of very many the
   * gravest are printed, lest a hundred warnings hide the error that stops the planning.
   */
  public static String print(List<Finding> findings) {
    StringBuilder out = new StringBuilder();
    List<Finding> sorted = findings.stream().distinct().sorted(BY_PLACE).toList();
    sorted.stream()
        .sorted(Comparator.comparing(Finding::severity))
        .limit(MOST)
        .sorted(BY_PLACE)
        .forEach(finding -> print(finding, out));
    if (sorted.size() > MOST) {
      out.append("and ").append(sorted.size() - MOST).append(" more; mend these first\n");
    }
    return out.toString();
  }

  private static void print(Finding finding, StringBuilder out) {
    Place place = finding.place();
    out.append(place).append(": ").append(finding.severity().word()).append(": ");
    out.append(finding.message()).append('\n');
    if (!place.lineText().isBlank()) {
      Excerpt excerpt = Excerpt.of(place.lineText(), place.column());
      out.append(INDENT).append(excerpt.text()).append('\n');
      out.append(INDENT).append(" ".repeat(excerpt.caret())).append("^\n");
    }
    if (!finding.advice().isEmpty()) {
      out.append(INDENT).append(finding.advice()).append('\n');
    }
  }
}
