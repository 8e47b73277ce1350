package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.rig.Rig;
import java.io.IOException;
import java.time.Instant;
import java.util.Comparator;
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
  private final List<Timed> moves;
  private final CueSheet sheet;
  private final Intake intake;
  private final Set<String> known;
  private final Instant when;
  private final Taken.Builder taken = new Taken.Builder();

  /**
   * One step, timed.
   *
   * @param line where it is written, from 1
   * @param changeover the song it leads to: its number in the set from 1, or its name
   * @param move which step of the changeover, from 1
   * @param seconds how long it took
   */
  public record Timed(int line, String changeover, int move, double seconds) {}

  private TimedMoves(
      List<Timed> moves, CueSheet sheet, Intake intake, Set<String> known, Instant when) {
    this.moves = moves;
    this.sheet = sheet;
    this.intake = intake;
    this.known = known;
    this.when = when;
  }

  /**
   * Adds all whole runs to a log, as played on stage. They tell no moment; so a run of the same
   * changeover with the same seconds in every step counts as one that was added before.
   *
   * @param sure asked whether a run was played that is hardly possible
   * @param when the time to write down for the first of them; each next one is a moment later
   * @throws IOException if the log cannot be read or written
   */
  public static Taken into(
      RunLog log, List<Timed> moves, CueSheet sheet, Rig rig, Predicate<String> sure, Instant when)
      throws IOException {
    Set<String> known = log.everAdded().stream().map(TimedMoves::times).collect(Collectors.toSet());
    TimedMoves timed = new TimedMoves(moves, sheet, new Intake(log, rig, sure), known, when);
    for (int at = 0; at < moves.size(); ) {
      at = timed.takeFrom(at);
    }
    return timed.taken.done();
  }

  /** The changeover and its times as a log keeps them. */
  private static String times(Run run) {
    return run.mark() + run.each().stream().map(split -> LogLine.figure(split.seconds())).toList();
  }

  /** Takes a run, or leaves out what is none; says where the next thing begins. */
  private int takeFrom(int at) throws IOException {
    Optional<Cue> cue = cue(moves.get(at).changeover());
    int steps = cue.map(c -> c.steps().size()).orElse(0);
    int end = end(at);
    if (steps > 0 && moves.get(at).move() == 1 && end - at >= steps) {
      takeRun(cue.get(), moves.subList(at, at + steps));
      return at + steps;
    }
    leaveOut(moves.subList(at, end), cue.map(c -> why(c, at, end)).orElseGet(() -> unknown(at)));
    return end;
  }

  /** Where the moves that follow one another from here on end. */
  private int end(int from) {
    int end = from + 1;
    while (end < moves.size() && follows(moves.get(end - 1), moves.get(end))) {
      end++;
    }
    return end;
  }

  private static boolean follows(Timed one, Timed next) {
    return next.changeover().equals(one.changeover()) && next.move() == one.move() + 1;
  }

  private void takeRun(Cue cue, List<Timed> whole) throws IOException {
    List<Double> seconds = whole.stream().map(Timed::seconds).toList();
    Instant moment = when.plusMillis(taken.runs());
    Run run = intake.run(moment, cue.song(), cue.steps(), seconds);
    switch (intake.take(run, known.contains(times(run)))) {
      case ADDED -> taken.add();
      case KNOWN -> leaveOut(whole, "in the log already");
      case HASTY -> leaveOut(whole, "far too quick");
    }
  }

  private void leaveOut(List<Timed> some, String why) {
    int last = some.get(some.size() - 1).line();
    taken.leaveOut(new Taken.LeftOut(some.get(0).line(), last, some.size(), why));
  }

  /** The set-up only if no other way is meant: a song may be played twice. */
  private Optional<Cue> cue(String name) {
    return sheet.cues().stream()
        .filter(cue -> cue.song().equals(name) || Integer.toString(cue.number()).equals(name))
        .min(Comparator.comparing(Cue::setUp));
  }

  private String unknown(int at) {
    return "the set has no song " + moves.get(at).changeover();
  }

  private String why(Cue cue, int from, int end) {
    if (cue.setUp()) {
      return "the set-up for " + cue.song() + " is no changeover";
    }
    if (cue.steps().isEmpty()) {
      return "on the way to " + cue.song() + " nothing moves";
    }
    int first = moves.get(from).move();
    int last = moves.get(end - 1).move();
    String some = first == last ? "move " + first : "moves " + first + " to " + last;
    return some + " of a run to " + cue.song() + ", which has moves 1 to " + cue.steps().size();
  }
}
