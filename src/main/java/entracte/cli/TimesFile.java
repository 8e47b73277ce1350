package entracte.cli;

import entracte.finding.Finding;
import entracte.finding.Place;
import entracte.finding.Severity;
import entracte.rehearsal.TimedMoves.Timed;
import entracte.setlist.SetList;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Times in a file from elsewhere, a spreadsheet as a rule: lines of {@code changeover, move,
 * seconds}. A line of heads may stand first; empty lines and those that begin with {@code #} are
 * passed over. Of mistakes that run through a whole file, such as semicolons, the first is told.
 */
final class TimesFile {
  private static final int FIELDS = 3;
  private static final String HEADS_OF_CSV = "when,where,to,";
  private static final String EXAMPLE =
      "Write changeover, move, seconds, with commas between: Bread Clock, 3, 4.5.";

  private static final String HOW_RUNS_TRAVEL =
      "It keeps no times of moves. The runs are in rehearsal.log; to take them along, copy that.";

  private final Path file;
  private final Set<String> changeovers = new HashSet<>();
  private final List<Timed> times = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private boolean begun;
  private boolean isOurs;

  /** What a file says: its times, or else what is wrong with it. */
  record Read(List<Timed> times, List<Finding> findings) {}

  private record Field(String text, int column) {}

  private TimesFile(Path file, SetList set) {
    this.file = file;
    for (int song = 0; song < set.songs().size(); song++) {
      changeovers.add(set.songs().get(song).name());
      changeovers.add(Integer.toString(song + 1));
    }
  }

  static Read read(Path file, byte[] bytes, SetList set) {
    TimesFile times = new TimesFile(file, set);
    String text = new String(bytes, StandardCharsets.UTF_8);
    List<String> lines = (text.startsWith("\uFEFF") ? text.substring(1) : text).lines().toList();
    for (int i = 0; i < lines.size() && !times.isOurs; i++) {
      if (!lines.get(i).isBlank() && !lines.get(i).strip().startsWith("#")) {
        times.line(i + 1, lines.get(i));
      }
    }
    return new Read(List.copyOf(times.times), List.copyOf(times.findings));
  }

  private void line(int number, String line) {
    boolean first = !begun;
    begun = true;
    List<Field> fields = fields(line);
    if (line.startsWith(HEADS_OF_CSV)) {
      isOurs = true;
      find(number, 1, line, "--csv has printed this", HOW_RUNS_TRAVEL);
    } else if (fields.size() < FIELDS) {
      parted(number, line, fields);
    } else if (!(first && areHeads(fields))) {
      timed(number, line, fields);
    }
  }

  /** What parts the fields, if not commas. */
  private void parted(int number, String line, List<Field> fields) {
    int semicolon = line.indexOf(';');
    int tab = line.indexOf('\t');
    if (semicolon >= 0) {
      find(number, semicolon + 1, line, "semicolons stand between the fields", EXAMPLE);
    } else if (tab >= 0) {
      find(number, tab + 1, line, "tabs stand between the fields", EXAMPLE);
    } else {
      String has = fields.size() == 1 ? "1 field" : fields.size() + " fields";
      find(number, line.length() + 1, line, "a line has three fields, this one " + has, EXAMPLE);
    }
  }

  private static boolean areHeads(List<Field> fields) {
    return fields.stream().noneMatch(f -> f.text().chars().anyMatch(Character::isDigit));
  }

  private void timed(int number, String line, List<Field> fields) {
    Field seconds = fields.get(fields.size() - 1);
    Field move = fields.get(fields.size() - 2);
    String name = name(line, move);
    Field before = fields.get(fields.size() - FIELDS);
    if (fields.size() > FIELDS
        && !changeovers.contains(name)
        && changeovers.contains(name(line, before))) {
      find(
          number,
          move.column() + move.text().length(),
          line,
          "a comma stands in the seconds",
          "Write them with a point: " + move.text() + "." + seconds.text() + ".");
      return;
    }
    Optional<Double> step =
        figure(move.text()).filter(m -> m >= 1 && m <= Integer.MAX_VALUE && m == Math.rint(m));
    Optional<Double> took = figure(seconds.text());
    if (step.isEmpty()) {
      find(number, move.column(), line, quoted(move) + " is no move", "Moves count from 1.");
    } else if (took.isEmpty()) {
      String advice = "Write them like 4.5, without a unit.";
      find(number, seconds.column(), line, quoted(seconds) + " is no number of seconds", advice);
    } else {
      times.add(new Timed(number, name, step.get().intValue(), took.get()));
    }
  }

  /** All that stands before a field: a song's name may hold commas. */
  private static String name(String line, Field next) {
    String before = line.substring(0, next.column() - 1);
    String name = before.substring(0, before.lastIndexOf(',')).strip();
    boolean quoted = name.length() > 1 && name.startsWith("\"") && name.endsWith("\"");
    return quoted ? name.substring(1, name.length() - 1).replace("\"\"", "\"") : name;
  }

  private static Optional<Double> figure(String text) {
    try {
      return Optional.of(Double.valueOf(text)).filter(d -> d >= 0 && d < Double.POSITIVE_INFINITY);
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private static String quoted(Field field) {
    return "\"" + field.text() + "\"";
  }

  private static List<Field> fields(String line) {
    List<Field> fields = new ArrayList<>();
    int from = 0;
    for (String part : line.split(",", -1)) {
      int blank = part.length() - part.stripLeading().length();
      fields.add(new Field(part.strip(), from + blank + 1));
      from += part.length() + 1;
    }
    return fields;
  }

  private void find(int line, int column, String text, String message, String advice) {
    if (findings.stream().noneMatch(f -> f.message().equals(message))) {
      Place place = new Place(file.toString(), line, column, text);
      findings.add(new Finding(Severity.ERROR, place, message, advice));
    }
  }
}
