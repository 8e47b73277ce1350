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
import java.util.Collections;
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
    Intake intake = new Intake(log, rig, sure);
    List<Intake.Came> came = new ArrayList<>();
    for (Played each : played) {
      Run run = intake.run(each.ended(), each.song(), steps(each, sheet), each.seconds());
      came.add(intake.take(run, !known.add(each.ended())));
    }
    return new Added(
        Collections.frequency(came, Intake.Came.ADDED),
        Collections.frequency(came, Intake.Came.KNOWN),
        Collections.frequency(came, Intake.Came.HASTY));
  }

  private static List<Step> steps(Played played, CueSheet sheet) {
    String mark = Mark.of(played.steps());
    return sheet.cues().stream()
        .map(Cue::steps)
        .filter(steps -> steps.size() == played.steps().size() && Mark.of(steps).equals(mark))
        .findFirst()
        .orElse(played.steps());
  }
}
