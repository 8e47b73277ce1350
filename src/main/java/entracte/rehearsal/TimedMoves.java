package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.rig.Rig;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Times that were taken elsewhere, on stage above all, as plain records of changeover, move and
 * seconds. Runs are made of them: each begins with move 1 and has every step of the changeover, in
 * order. What is not whole is left out, since its total means nothing.
 */
public final class TimedMoves {
  private TimedMoves() {}

  /**
   * One step, timed.
   *
   * @param changeover the song it leads to: its number in the set from 1, or its name
   * @param move which step of the changeover, from 1
   * @param seconds how long it took
   */
  public record Timed(String changeover, int move, double seconds) {}

  /**
   * Adds all whole runs to a log, as played on stage. They tell no moment; so a run of the same
   * changeover with the same seconds in every step counts as one that was added before.
   *
   * @param sure asked whether a run was played that is hardly possible
   * @param when the time to write down for the first of them; each next one is a moment later
   * @throws IOException if the log cannot be read or written
   */
  public static Added into(
      RunLog log, List<Timed> moves, CueSheet sheet, Rig rig, Predicate<String> sure, Instant when)
      throws IOException {
    Set<String> known = log.everAdded().stream().map(TimedMoves::times).collect(Collectors.toSet());
    Intake intake = new Intake(log, rig, sure);
    List<Run> whole = whole(moves, sheet, intake, when);
    for (Run run : whole) {
      intake.take(run, known.contains(times(run)));
    }
    int used = whole.stream().mapToInt(run -> run.each().size()).sum();
    return intake.done(moves.size() - used);
  }

  /** The changeover and its times as a log keeps them. */
  private static String times(Run run) {
    return run.mark() + run.each().stream().map(split -> LogLine.figure(split.seconds())).toList();
  }

  private static List<Run> whole(List<Timed> moves, CueSheet sheet, Intake intake, Instant when) {
    List<Run> runs = new ArrayList<>();
    int at = 0;
    while (at < moves.size()) {
      Optional<Cue> cue = cue(sheet, moves.get(at).changeover());
      int steps = cue.map(c -> c.steps().size()).orElse(0);
      if (steps > 0 && isWhole(moves, at, steps)) {
        Instant moment = when.plusMillis(runs.size());
        List<Double> seconds = moves.subList(at, at + steps).stream().map(Timed::seconds).toList();
        runs.add(intake.run(moment, cue.get().song(), cue.get().steps(), seconds));
        at += steps;
      } else {
        at++;
      }
    }
    return runs;
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
}
