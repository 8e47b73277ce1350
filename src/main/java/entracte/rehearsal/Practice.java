package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Step;
import entracte.plan.DirectWay;
import entracte.plan.Plan;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A rehearsal, line by line: brings the rig to where a changeover begins, takes the time, writes it
 * down, and says how the odds stand. Works wherever lines can be read and written, and with any
 * pedal that types a line end.
 */
public final class Practice {
  /** Nobody is quicker; a clock that stood still must not give a run of no time. */
  static final double SHORTEST_SECONDS = 0.01;

  private static final String KEYS =
      "While the clock runs, Enter or the foot ends a step, s counts a slip, u goes a step back, x"
          + " stops.";

  private final Plan plan;
  private final RunLog log;
  private final Dialogue dialogue;
  private final Answers answers;
  private final Clock clock;
  private final Settings settings;
  private final RigPlace rig;
  private final List<Run> runs;
  private Learned learned;
  private CueSheet sheet;
  private boolean taught;

  /**
   * How to rehearse.
   *
   * @param stepByStep whether each step is timed, or only the whole
   * @param standing the song, from 0, that has left the rig as it stands; {@link DirectWay#START}
   *     for where the plan starts
   */
  public record Settings(Choice choice, boolean stepByStep, int standing) {}

  /**
   * What came of a rehearsal.
   *
   * @param standing the song, from 0, that has left the rig as it stands now, or {@link
   *     DirectWay#START}; empty if a changeover was broken off
   */
  public record Outcome(Learned learned, OptionalInt standing) {}

  /** What the player wants after a run. */
  private enum After {
    ON,
    AGAIN,
    END
  }

  private Practice(Plan plan, RunLog log, Settings settings, Dialogue dialogue, Clock clock)
      throws IOException {
    this.plan = plan;
    this.log = log;
    this.dialogue = dialogue;
    this.answers = new Answers(dialogue);
    this.clock = clock;
    this.settings = settings;
    this.rig = new RigPlace(plan, answers, settings.standing());
    RunLog.Contents contents = log.read();
    contents.unread().stream().map(log::note).forEach(dialogue::say);
    this.runs = new ArrayList<>(contents.runs());
    learn();
  }

  /**
   * Rehearses until the choice is used up or the player ends it. Where the log cannot be written
   * this is said before the first move, and the times hold until the end of the rehearsal.
   *
   * @throws IOException if the log cannot be read
   */
  public static Outcome rehearse(
      Plan plan, RunLog log, Settings settings, Dialogue dialogue, Clock clock) throws IOException {
    Practice practice = new Practice(plan, log, settings, dialogue, clock);
    if (practice.keepsTimes()) {
      practice.rehearse();
    }
    return new Outcome(practice.learned, practice.rig.song());
  }

  /** Whether to begin: the log takes times, or the player does without. */
  private boolean keepsTimes() {
    Optional<String> trouble = log.trouble();
    trouble.ifPresent(
        why -> dialogue.say("No time will be kept: " + why + ". The odds hold until you end."));
    return trouble.isEmpty() || !answers.to("Enter goes on without, q ends: ", "").equals("q");
  }

  private void learn() {
    learned = Learned.from(plan.setList().rig(), runs);
    sheet = CueSheet.of(plan, learned);
  }

  private void rehearse() throws IOException {
    Choice choice = settings.choice();
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
      after = rig.bring(song - 1) ? time(song) : After.END;
    }
    return after;
  }

  private After time(int song) throws IOException {
    Cue cue = sheet.cues().get(song);
    dialogue.say("");
    dialogue.say(RunWords.announce(cue, learned.outlook(cue.steps())));
    OtherWays.to(cue, learned).ifPresent(dialogue::say);
    teachKeys();
    if (answers.to("Enter starts the clock, q ends: ", "").equals(Answers.END)) {
      return After.END;
    }
    Drill drill = new Drill(cue.steps().size(), clock.nanos().getAsLong());
    boolean whole = new Timing(dialogue, clock, cue, drill).take(settings.stepByStep());
    if (!whole) {
      return stopped(cue, drill);
    }
    rig.stands(song);
    Run run = run(cue, drill);
    double expected = Math.min(run.makeup().total(), learned.outlook(cue.steps()).typical(1));
    return Haste.isDoubtful(run.seconds(), expected) ? doubted(cue, run, expected) : keep(cue, run);
  }

  /** Once in a rehearsal: who knows them need not read them again. */
  private void teachKeys() {
    if (!taught && settings.stepByStep()) {
      dialogue.say(KEYS);
    }
    taught = true;
  }

  private After stopped(Cue cue, Drill drill) {
    List<Step> done = cue.steps().subList(0, drill.at());
    List<Step> left = cue.steps().subList(drill.at(), cue.steps().size());
    dialogue.say("Stopped, and not written down. What is left to do, so that the rig stands:");
    dialogue.list(left.stream().map(step -> "  " + step.text()).toList());
    After after =
        after("Enter once it stands so, r to take back what is done and begin anew, q to end: ");
    if (after == After.ON) {
      rig.stands(cue.number() - 1);
    } else {
      rig.standsOnTheWay(cue.number() - 1, done);
    }
    return after;
  }

  /** A key that lay under something, or lines from a file; or a feat. */
  private After doubted(Cue cue, Run run, double expected) throws IOException {
    dialogue.say(RunWords.doubted(run, expected));
    String answer =
        answers.to("y writes it down, Enter leaves it out, r once more, q ends: ", "yr");
    return answer.equals("y") ? keep(cue, run) : meant(answer);
  }

  private After keep(Cue cue, Run run) {
    OptionalDouble before = odds(cue);
    Learned earlier = learned;
    dialogue.say(RunWords.result(cue, run));
    boolean kept = written(() -> log.add(run), "This time is not kept");
    runs.add(run);
    learn();
    odds(cue).ifPresent(now -> dialogue.say(RunWords.odds(now, before.orElseThrow())));
    OtherWays.moved(sheet, cue, earlier, learned).ifPresent(dialogue::say);
    String answer = answers.to("Enter goes on, r once more, w withdraws this time, q ends: ", "rw");
    if (!answer.equals("w")) {
      return meant(answer);
    }
    if (!kept || written(() -> log.withdraw(run), "It cannot be withdrawn")) {
      runs.remove(run);
      learn();
      dialogue.say("Withdrawn.");
    }
    return after("Enter goes on, r once more, q ends: ");
  }

  /** Something to be written into the log. */
  private interface Writing {
    void now() throws IOException;
  }

  /** A full disk must not end a rehearsal. */
  private boolean written(Writing writing, String otherwise) {
    try {
      writing.now();
      return true;
    } catch (IOException e) {
      dialogue.say(otherwise + ": " + log.why(e) + ".");
      return false;
    }
  }

  private OptionalDouble odds(Cue cue) {
    return cue.setUp()
        ? OptionalDouble.empty()
        : new Standing(cue, learned.outlook(cue.steps())).odds();
  }

  private After after(String question) {
    return meant(answers.to(question, "r"));
  }

  private static After meant(String answer) {
    return switch (answer) {
      case Answers.END -> After.END;
      case "r" -> After.AGAIN;
      default -> After.ON;
    };
  }

  private Run run(Cue cue, Drill drill) {
    List<Makeup> makeup = learned.model().makeup(cue.steps());
    List<Run.Split> each = new ArrayList<>();
    for (int i = 0; settings.stepByStep() && i < makeup.size(); i++) {
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
