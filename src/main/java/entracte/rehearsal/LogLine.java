package entracte.rehearsal;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A run as a line of plain text: fields with a tab between, each {@code name: value} but the first
 * two and the last. The last is the word {@code end}, by which a line that was cut off is known.
 *
 * <pre>
 * 2026-03-01T19:02:11Z  rehearsal  to: Bread Clock  moves: 3f2a9c10aa  took: 41.2  slips: 1
 *     expected: read 9.1, plug 8.25  each: 3.10 of read 1.2, plug 2.1; 2.05 of ..  end
 * </pre>
 */
final class LogLine {
  private static final String END = "end";
  private static final String OF = " of ";
  private static final String TAB = "\t";
  private static final String WITHDRAWN = "withdrawn";
  private static final int FEWEST_FIELDS = 3;

  private LogLine() {}

  /** What a line says: a run, or that the run of that moment shall not count. */
  record Entry(Optional<Run> run, Instant withdrawn) {}

  static String write(Run run) {
    List<String> fields = new ArrayList<>();
    fields.add(run.when().toString());
    fields.add(run.where().name().toLowerCase(Locale.ROOT));
    fields.add("to: " + tidy(run.to()));
    fields.add("moves: " + run.mark());
    fields.add("took: " + figure(run.seconds()));
    fields.add("slips: " + run.slips());
    if (run.makeup().total() > 0) {
      fields.add("expected: " + makeup(run.makeup()));
    }
    if (!run.each().isEmpty()) {
      fields.add("each: " + String.join("; ", run.each().stream().map(LogLine::split).toList()));
    }
    fields.add(END);
    return String.join(TAB, fields);
  }

  static String withdraw(Run run) {
    return String.join(TAB, run.when().toString(), WITHDRAWN, END);
  }

  /** What the line says; empty if it is cut off or was never one of these. */
  static Optional<Entry> read(String line) {
    List<String> fields = Arrays.asList(line.split(TAB, -1));
    if (fields.size() < FEWEST_FIELDS || !fields.get(fields.size() - 1).equals(END)) {
      return Optional.empty();
    }
    try {
      Instant when = Instant.parse(fields.get(0));
      return Optional.of(
          fields.get(1).equals(WITHDRAWN)
              ? new Entry(Optional.empty(), when)
              : new Entry(Optional.of(run(when, fields)), Instant.MIN));
    } catch (DateTimeException | IllegalArgumentException broken) {
      return Optional.empty();
    }
  }

  private static Run run(Instant when, List<String> fields) {
    Map<String, String> named = new LinkedHashMap<>();
    for (String field : fields.subList(2, fields.size() - 1)) {
      int colon = field.indexOf(": ");
      if (colon > 0) {
        named.put(field.substring(0, colon), field.substring(colon + 2));
      }
    }
    return new Run(
        when,
        Run.Where.valueOf(fields.get(1).toUpperCase(Locale.ROOT)),
        named.getOrDefault("to", ""),
        named.getOrDefault("moves", ""),
        Double.parseDouble(named.getOrDefault("took", "")),
        Integer.parseInt(named.getOrDefault("slips", "0")),
        readMakeup(named.getOrDefault("expected", "")),
        split(named.getOrDefault("each", ""), "; ").stream().map(LogLine::readSplit).toList());
  }

  private static String split(Run.Split split) {
    return figure(split.seconds()) + OF + makeup(split.makeup());
  }

  private static Run.Split readSplit(String text) {
    int of = text.indexOf(OF);
    return of < 0
        ? new Run.Split(Double.parseDouble(text), new Makeup(Map.of()))
        : new Run.Split(
            Double.parseDouble(text.substring(0, of)),
            readMakeup(text.substring(of + OF.length())));
  }

  private static String makeup(Makeup makeup) {
    List<String> parts = new ArrayList<>();
    for (Work work : Work.values()) {
      if (makeup.of(work) > 0) {
        parts.add(work.word() + " " + figure(makeup.of(work)));
      }
    }
    return String.join(", ", parts);
  }

  /** Kinds of work that a later version may have named otherwise are passed over. */
  private static Makeup readMakeup(String text) {
    Map<Work, Double> seconds = new EnumMap<>(Work.class);
    for (String part : split(text, ", ")) {
      int space = part.lastIndexOf(' ');
      for (Work work : Work.values()) {
        if (space > 0 && work.word().equals(part.substring(0, space))) {
          seconds.put(work, Double.valueOf(part.substring(space + 1)));
        }
      }
    }
    return new Makeup(seconds);
  }

  private static List<String> split(String text, String by) {
    return text.isEmpty() ? List.of() : List.of(text.split(by));
  }

  private static String tidy(String name) {
    return name.replaceAll("\\p{Cntrl}", " ");
  }

  /** To the hundredth of a second: hands are not quicker than that. */
  static String figure(double seconds) {
    return String.format(Locale.ROOT, "%.2f", seconds);
  }
}
