package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Detour;
import entracte.cue.Step;
import entracte.plan.DirectWay;
import entracte.plan.Plan;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A rehearsal, line by line: brings the rig to where a changeover begins, takes the time, writes it
 * down, and says how the odds stand. Works wherever lines can be read and written, and with any
 * pedal that types a line end.
 */
public final class Practice {
  private static final String END = "q";

  /** Nobody is quicker; a clock that stood still must not give a run of no time. */
  static final double SHORTEST_SECONDS = 0.01;

  private final Plan plan;
  private final RunLog log;
  private final Dialogue dialogue;
  private final Clock clock;
  private final boolean stepByStep;
  private final List<Run> runs;
  private Learned learned;
  private CueSheet sheet;
  private int rigAt = DirectWay.START;

  /** What the player wants after a run. */
  private enum After {
    ON,
    AGAIN,
    END
  }

  private Practice(Plan plan, RunLog log, Dialogue dialogue, Clock clock, boolean stepByStep)
      throws IOException {
    this.plan = plan;
    this.log = log;
    this.dialogue = dialogue;
    this.clock = clock;
    this.stepByStep = stepByStep;
    RunLog.Contents contents = log.read();
    contents.notes().forEach(dialogue::say);
    this.runs = new ArrayList<>(contents.runs());
    learn();
  }

  /**
   * Rehearses until the choice is used up or the player ends it.
   *
   * @param stepByStep whether each step is timed, or only the whole
   * @return what is known of the player afterwards
   * @throws IOException if the log cannot be read or written
   */
  public static Learned rehearse(
      Plan plan, RunLog log, Choice choice, boolean stepByStep, Dialogue dialogue, Clock clock)
      throws IOException {
    Practice practice = new Practice(plan, log, dialogue, clock, stepByStep);
    practice.rehearse(choice);
    return practice.learned;
  }

  private void learn() {
    learned = Learned.from(plan.setList().rig(), runs);
    sheet = CueSheet.of(plan, learned);
  }

  private void rehearse(Choice choice) throws IOException {
    boolean on = true;
    while (on) {
      List<Integer> songs = choice.songs(sheet, learned);
      for (int i = 0; on && i < songs.size(); i++) {
        on = practise(songs.get(i)) != After.END;
      }
      on &= choice.endless() && !songs.isEmpty();
    }
  }

  private After practise(int song) throws IOException {
    After after = After.AGAIN;
    while (after == After.AGAIN) {
      after = bring(song - 1) ? time(song) : After.END;
    }
    return after;
  }

  /** Gets the rig to where the song before leaves it; false if the player ends the rehearsal. */
  private boolean bring(int song) {
    if (song == rigAt) {
      return true;
    }
    dialogue.say("");
    if (song == DirectWay.START) {
      dialogue.say("Bring the rig to where the plan starts, as before the set-up.");
    } else {
      List<Step> steps = Detour.steps(plan, rigAt, song);
      int moves = steps.stream().mapToInt(Step::moves).sum();
      dialogue.say(
          "Bring the rig to where "
              + plan.songs().get(song).song().name()
              + " leaves it, without the clock: "
              + Summary.moves(moves)
              + from()
              + ".");
      steps.forEach(step -> dialogue.say("  " + step.text()));
    }
    Optional<String> answer = dialogue.ask("Enter once it stands so, " + END + " to end: ");
    if (answer.isEmpty() || answer.get().equals(END)) {
      return false;
    }
    rigAt = song;
    return true;
  }

  private String from() {
    boolean bare = rigAt == DirectWay.START && plan.start().state().cords().isEmpty();
    return bare ? " from a rig with nothing plugged" : "";
  }

  private After time(int song) throws IOException {
    Cue cue = sheet.cues().get(song);
    dialogue.say("");
    dialogue.say(RunWords.announce(cue, learned.outlook(cue.steps())));
    Optional<String> ready = dialogue.ask("Enter starts the clock, " + END + " ends: ");
    if (ready.isEmpty() || ready.get().equals(END)) {
      return After.END;
    }
    Drill drill = new Drill(cue.steps().size(), clock.nanos().getAsLong());
    boolean whole = new Timing(dialogue, clock, cue.steps(), drill).take(stepByStep);
    if (!whole) {
      return stopped(cue, drill);
    }
    rigAt = song;
    return keep(cue, drill);
  }

  private After stopped(Cue cue, Drill drill) {
    List<Step> left = cue.steps().subList(drill.at(), cue.steps().size());
    dialogue.say("Stopped, and not written down. What is left to do, so that the rig stands:");
    left.forEach(step -> dialogue.say("  " + step.text()));
    Optional<String> answer =
        dialogue.ask("Enter once it stands so, r to do it once more, " + END + " to end: ");
    rigAt = cue.number() - 1;
    return after(answer);
  }

  private After keep(Cue cue, Drill drill) throws IOException {
    OptionalDouble before = odds(cue);
    Run run = run(cue, drill);
    log.add(run);
    runs.add(run);
    learn();
    dialogue.say(RunWords.result(cue, run));
    odds(cue).ifPresent(now -> dialogue.say(RunWords.odds(now, before.orElseThrow())));
    Optional<String> answer =
        dialogue.ask("Enter goes on, r once more, w withdraws this time, " + END + " ends: ");
    if (answer.isPresent() && answer.get().equals("w")) {
      log.withdraw(run);
      runs.remove(run);
      learn();
      dialogue.say("Withdrawn.");
      return After.ON;
    }
    return after(answer);
  }

  private OptionalDouble odds(Cue cue) {
    return cue.setUp()
        ? OptionalDouble.empty()
        : new Standing(cue, learned.outlook(cue.steps())).odds();
  }

  private static After after(Optional<String> answer) {
    if (answer.isEmpty() || answer.get().equals(END)) {
      return After.END;
    }
    return answer.get().equals("r") ? After.AGAIN : After.ON;
  }

  private Run run(Cue cue, Drill drill) {
    List<Makeup> makeup = learned.model().makeup(cue.steps());
    List<Run.Split> each = new ArrayList<>();
    for (int i = 0; stepByStep && i < makeup.size(); i++) {
      each.add(new Run.Split(drill.each().get(i), makeup.get(i)));
    }
    return new Run(
        clock.now().instant(),
        Run.Where.REHEARSAL,
        cue.song(),
        Mark.of(cue.steps()),
        Math.max(drill.seconds(), SHORTEST_SECONDS),
        drill.slips(),
        Makeup.sum(makeup),
        each);
  }
}
