package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Spot;
import entracte.cue.Step;
import entracte.cue.Verb;
import entracte.rig.Rig;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Changeovers that were timed on stage, for the log. */
public final class Nights {
  /** How far a knob turned if nobody knows: the mean way between two points of its scale. */
  private static final double SOME_TURN = 1.0 / 3;

  private Nights() {}

  /**
   * One changeover, played whole.
   *
   * @param ended when; a run that the log has of that moment is the same one
   * @param seconds of each step
   */
  public record Played(Instant ended, String song, List<Step> steps, List<Double> seconds) {
    public Played {
      steps = List.copyOf(steps);
      seconds = List.copyOf(seconds);
      if (steps.size() != seconds.size()) {
        throw new IllegalArgumentException(steps.size() + " steps, " + seconds.size() + " times");
      }
    }
  }

  /** A step of which only this is known, as far as it mostly goes. */
  public static Step step(Verb verb, String text, int moves, List<Spot> reach) {
    double size =
        switch (verb) {
          case TURN -> SOME_TURN;
          case SWITCH -> 1;
          case LOWER, PULL, MOVE, PLUG, TUNE, RAISE -> 0;
        };
    return new Step(verb, text, "", moves, reach, size, 0, false);
  }

  /**
   * Adds what the log does not have yet, nor had before it was withdrawn.
   *
   * @param sheet the plan as it is now; a step of it that was played tells how far it goes
   * @param sure asked whether a run was played that is hardly possible
   * @throws IOException if the log cannot be read or written
   */
  public static Added into(
      RunLog log, List<Played> played, CueSheet sheet, Rig rig, Predicate<String> sure)
      throws IOException {
    Set<Instant> known = log.everAdded().stream().map(Run::when).collect(Collectors.toSet());
    Learned learned = Learned.from(rig, log);
    int added = 0;
    int hasty = 0;
    for (Played each : played) {
      Run run = run(each, steps(each, sheet), learned.model());
      if (known.add(each.ended())) {
        boolean counts = Haste.counts(run, learned.player(), sure);
        if (counts) {
          log.add(run);
        }
        added += counts ? 1 : 0;
        hasty += counts ? 0 : 1;
      }
    }
    return new Added(added, played.size() - added - hasty, hasty, 0);
  }

  private static List<Step> steps(Played played, CueSheet sheet) {
    String mark = Mark.of(played.steps());
    return sheet.cues().stream()
        .map(Cue::steps)
        .filter(steps -> steps.size() == played.steps().size() && Mark.of(steps).equals(mark))
        .findFirst()
        .orElse(played.steps());
  }

  private static Run run(Played played, List<Step> steps, TimeModel model) {
    List<Makeup> makeup = model.makeup(steps);
    List<Run.Split> each = new ArrayList<>();
    for (int i = 0; i < makeup.size(); i++) {
      each.add(new Run.Split(played.seconds().get(i), makeup.get(i)));
    }
    double seconds = played.seconds().stream().mapToDouble(Double::doubleValue).sum();
    return new Run(
        played.ended(),
        Run.Where.STAGE,
        played.song(),
        Mark.of(steps),
        Math.max(seconds, Practice.SHORTEST_SECONDS),
        0,
        Makeup.sum(makeup),
        each);
  }
}
