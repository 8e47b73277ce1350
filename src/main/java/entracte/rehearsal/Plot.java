package entracte.rehearsal;

import entracte.cue.TimeText;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The times of one changeover, run after run, in letters that every terminal has. Each run is one
 * column: {@code o} without a slip, {@code x} with one. The gap is a line of dashes.
 *
 * <pre>
 *    60 s |  o
 *         |    x o
 *    45 s |--------o-o--- gap
 *         |            o
 * </pre>
 */
final class Plot {
  private static final int ROWS = 7;
  private static final int LABEL = 12;
  private static final String GAP = " gap";

  private final List<Run> runs;
  private final OptionalDouble gap;
  private final double low;
  private final double high;

  private Plot(List<Run> runs, OptionalDouble gap) {
    this.runs = runs;
    this.gap = gap;
    double least = runs.stream().mapToDouble(Run::seconds).min().orElseThrow();
    double most = runs.stream().mapToDouble(Run::seconds).max().orElseThrow();
    low = Math.min(least, gap.orElse(least));
    high = Math.max(most, gap.orElse(most));
  }

  /**
   * The plot.
   *
   * @param runs the first first; of more than fit the last are shown
   * @param width of the longest line
   * @return no line at all below two runs: one point is no course
   */
  static List<String> lines(List<Run> runs, OptionalDouble gap, int width) {
    int most = (width - LABEL - GAP.length()) / 2;
    List<Run> shown = runs.subList(Math.max(0, runs.size() - most), runs.size());
    return shown.size() < 2 ? List.of() : new Plot(shown, gap).lines();
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (int row = ROWS - 1; row >= 0; row--) {
      lines.add(line(row).stripTrailing());
    }
    return lines;
  }

  private String line(int row) {
    boolean atGap = gap.isPresent() && row == row(gap.getAsDouble());
    StringBuilder line = new StringBuilder(label(row, atGap)).append('|');
    String empty = atGap ? "--" : "  ";
    for (Run run : runs) {
      boolean here = row(run.seconds()) == row;
      line.append(here ? empty.charAt(0) + (run.slips() > 0 ? "x" : "o") : empty);
    }
    return line.append(atGap ? GAP : "").toString();
  }

  /** The gap's own row says the gap; the others only the ends of the scale. */
  private String label(int row, boolean atGap) {
    String text = "";
    if (atGap) {
      text = TimeText.of(gap.getAsDouble());
    } else if (row == ROWS - 1 || row == 0 && high > low) {
      text = TimeText.of(row == 0 ? low : high);
    }
    return String.format("%" + (LABEL - 2) + "s ", text);
  }

  private int row(double seconds) {
    return high > low ? (int) Math.round((seconds - low) / (high - low) * (ROWS - 1)) : ROWS - 1;
  }
}
