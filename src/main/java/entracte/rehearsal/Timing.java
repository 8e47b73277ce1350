package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.Step;
import entracte.cue.TimeText;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The lines that pass while the clock runs. */
final class Timing {
  private final Dialogue dialogue;
  private final Clock clock;
  private final OptionalDouble gap;
  private final List<Step> steps;
  private final Drill drill;

  Timing(Dialogue dialogue, Clock clock, Cue cue, Drill drill) {
    this.dialogue = dialogue;
    this.clock = clock;
    this.gap = cue.setUp() ? OptionalDouble.empty() : cue.gapSeconds();
    this.steps = cue.steps();
    this.drill = drill;
  }

  /** Takes the time; false if the player stopped it before the end. */
  boolean take(boolean stepByStep) {
    if (!stepByStep) {
      dialogue.list(steps.stream().map(step -> "  " + step.text()).toList());
    }
    while (!drill.done()) {
      String line = stepByStep ? step() : "Enter once all is done, s for a slip, x to stop: ";
      Optional<String> answer = dialogue.ask(line, this::elapsed);
      long now = clock.nanos().getAsLong();
      if (answer.isEmpty() || answer.get().equals("x")) {
        return false;
      }
      hear(answer.get(), now, stepByStep);
    }
    return true;
  }

  /** {@code 12 s of 45 s}. */
  private String elapsed() {
    double seconds = drill.secondsAt(clock.nanos().getAsLong());
    String of = gap.isPresent() ? " of " + TimeText.of(gap.getAsDouble()) : "";
    return TimeText.of(Math.floor(seconds)) + of;
  }

  private void hear(String answer, long now, boolean stepByStep) {
    switch (answer) {
      case "" -> {
        if (stepByStep) {
          drill.press(now);
        } else {
          drill.pressForAll(now);
        }
      }
      case "s" -> {
        drill.slip();
        dialogue.say("         " + RunWords.slips(drill.slips()).substring(2) + " so far");
      }
      case "u" -> drill.back();
      default -> dialogue.say("Enter: done. s: a slip. u: one step back. x: stop.");
    }
  }

  private String step() {
    String count = drill.at() + 1 + "/" + steps.size();
    return String.format("%7s  %s ", count, steps.get(drill.at()).text());
  }
}
