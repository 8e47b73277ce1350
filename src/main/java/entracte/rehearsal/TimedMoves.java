package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.rig.Rig;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Times that were taken elsewhere, on stage above all, as plain records of changeover, move and
 * seconds. Runs are made of them: each begins with move 1 and has every step of the changeover, in
 * order. What is not whole is left out, since its total means nothing.
 */
public final class TimedMoves {
  private static final int FIELDS = 3;

  private TimedMoves() {}

  /**
   * One step, timed.
   *
   * @param changeover the song it leads to: its number in the set from 1, or its name
   * @param move which step of the changeover, from 1
   * @param seconds how long it took
   */
  public record Timed(String changeover, int move, double seconds) {}

  /** What came of it: how many runs were added, and how many records were in none. */
  public record Imported(int runs, int leftOver) {}

  /**
   * Reads lines of {@code changeover, move, seconds}; empty lines and those that begin with {@code
   * #} are passed over.
   *
   * @throws IllegalArgumentException with a message for the musician if a line is something else
   */
  public static List<Timed> read(List<String> lines) {
    List<Timed> moves = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        int number = i + 1;
        moves.add(
            timed(line)
                .orElseThrow(
                    () ->
                        new IllegalArgumentException(
                            "line " + number + " is not: changeover, move, seconds")));
      }
    }
    return moves;
  }

  private static Optional<Timed> timed(String line) {
    String[] fields = line.split(",");
    if (fields.length < FIELDS) {
      return Optional.empty();
    }
    int last = fields.length - 1;
    String name = line.substring(0, line.lastIndexOf(',', line.lastIndexOf(',') - 1));
    try {
      int move = Integer.parseInt(fields[last - 1].strip());
      double seconds = Double.parseDouble(fields[last].strip());
      boolean sound = move >= 1 && seconds >= 0 && seconds < Double.POSITIVE_INFINITY;
      return sound ? Optional.of(new Timed(name.strip(), move, seconds)) : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /**
   * Adds all whole runs to a log, as played on stage.
   *
   * @param when the time to write down for the first of them; each next one is a moment later
   * @throws IOException if the log cannot be written
   */
  public static Imported into(RunLog log, List<Timed> moves, CueSheet sheet, Rig rig, Instant when)
      throws IOException {
    int runs = 0;
    int used = 0;
    int at = 0;
    while (at < moves.size()) {
      Optional<Cue> cue = cue(sheet, moves.get(at).changeover());
      int steps = cue.map(c -> c.steps().size()).orElse(0);
      if (steps > 0 && isWhole(moves, at, steps)) {
        log.add(run(cue.get(), moves.subList(at, at + steps), rig, when.plusMillis(runs)));
        runs++;
        used += steps;
        at += steps;
      } else {
        at++;
      }
    }
    return new Imported(runs, moves.size() - used);
  }

  private static Optional<Cue> cue(CueSheet sheet, String name) {
    return sheet.cues().stream()
        .filter(cue -> !cue.setUp())
        .filter(cue -> cue.song().equals(name) || Integer.toString(cue.number()).equals(name))
        .findFirst();
  }

  private static boolean isWhole(List<Timed> moves, int from, int steps) {
    if (from + steps > moves.size()) {
      return false;
    }
    for (int i = 0; i < steps; i++) {
      Timed each = moves.get(from + i);
      if (each.move() != i + 1 || !each.changeover().equals(moves.get(from).changeover())) {
        return false;
      }
    }
    return true;
  }

  private static Run run(Cue cue, List<Timed> moves, Rig rig, Instant when) {
    List<Makeup> makeup = new TimeModel(rig).makeup(cue.steps());
    List<Run.Split> each = new ArrayList<>();
    for (int i = 0; i < moves.size(); i++) {
      each.add(new Run.Split(moves.get(i).seconds(), makeup.get(i)));
    }
    double seconds = moves.stream().mapToDouble(Timed::seconds).sum();
    return new Run(
        when,
        Run.Where.STAGE,
        cue.song(),
        Mark.of(cue.steps()),
        Math.max(seconds, Practice.SHORTEST_SECONDS),
        0,
        Makeup.sum(makeup),
        each);
  }
}
