package entracte.rehearsal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** All runs as comma-separated values (RFC 4180), for a spreadsheet. */
public final class Csv {
  private static final String HEAD = "when,where,to,moves,run,seconds,expected,slips";

  private Csv() {}

  /**
   * The lines, the heads of the columns first.
   *
   * @throws java.io.IOException if the log is there but cannot be read
   */
  public static List<String> lines(RunLog log) throws java.io.IOException {
    return lines(log.read().runs());
  }

  static List<String> lines(List<Run> runs) {
    Map<String, Integer> count = new HashMap<>();
    List<String> lines = new ArrayList<>(List.of(HEAD));
    for (Run run : runs) {
      lines.add(
          String.join(
              ",",
              run.when().toString(),
              run.where().name().toLowerCase(Locale.ROOT),
              quoted(run.to()),
              run.mark(),
              Integer.toString(count.merge(run.mark(), 1, Integer::sum)),
              figure(run.seconds()),
              figure(run.makeup().total()),
              Integer.toString(run.slips())));
    }
    return lines;
  }

  /** A spreadsheet must not take a song's name for a formula. */
  private static String quoted(String text) {
    boolean formula = !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0;
    return '"' + (formula ? "'" : "") + text.replace("\"", "\"\"") + '"';
  }

  private static String figure(double seconds) {
    return String.format(Locale.ROOT, "%.2f", seconds);
  }
}
