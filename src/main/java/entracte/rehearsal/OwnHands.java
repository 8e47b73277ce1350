package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Step;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What was learned of a player, in words: seconds for each kind of work, and how they fall. */
final class OwnHands {
  private static final int LATER = 5;
  private static final double WHOLE = 100;

  private final Learned learned;
  private final Map<Work, Double> seconds = new EnumMap<>(Work.class);
  private final Map<Work, Integer> times = new EnumMap<>(Work.class);

  private OwnHands(CueSheet sheet, Learned learned) {
    this.learned = learned;
    sheet.cues().stream().map(Cue::steps).forEach(this::count);
  }

  /** Nothing before the first run: then all is as the model has it. */
  static List<String> lines(CueSheet sheet, Learned learned) {
    return learned.timedRuns() == 0 ? List.of() : new OwnHands(sheet, learned).lines();
  }

  private void count(List<Step> steps) {
    List<Makeup> makeup = learned.model().makeup(steps);
    for (int i = 0; i < steps.size(); i++) {
      for (Work work : Work.values()) {
        double each = makeup.get(i).of(work);
        if (each > 0) {
          seconds.merge(work, each, Double::sum);
          times.merge(work, times(work, steps.get(i)), Integer::sum);
        }
      }
    }
  }

  /** A whole cord has two plugs. */
  private static int times(Work work, Step step) {
    return (work == Work.PULL || work == Work.PLUG) && step.wholeCord() ? 2 : 1;
  }

  private List<String> lines() {
    List<String> each = new ArrayList<>();
    for (Work work : seconds.keySet()) {
      double model = seconds.get(work) / times.get(work);
      each.add(word(work) + " " + figure(model * learned.player().factor(work), model));
    }
    return List.of(
        "Seconds of your hands, and in brackets what was thought before the first run: "
            + String.join(", ", each)
            + ".",
        String.format(
            Locale.ROOT,
            "Of the time of a first run the second takes some %d %%, the fifth %d %%.",
            percent(2),
            percent(LATER)));
  }

  private long percent(int run) {
    return Math.round(WHOLE * learned.part(run));
  }

  private static String figure(double own, double model) {
    return String.format(Locale.ROOT, "%.1f (%.1f)", own, model);
  }

  private static String word(Work work) {
    return switch (work) {
      case READ -> "to read a line";
      case PULL -> "pull a plug";
      case PLUG -> "plug one in";
      case TURN -> "turn a knob";
      case SWITCH -> "throw a switch";
      case TUNE -> "tune a module";
      case LEVEL -> "the main level";
    };
  }
}
