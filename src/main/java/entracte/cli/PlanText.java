package entracte.cli;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Step;
import entracte.cue.TimeText;
import entracte.plan.Plan;
import entracte.plan.Result;
import entracte.print.Fill;
import java.util.ArrayList;
import java.util.List;

/**
 * A plan as text for a screen of 80 columns: a heading, who plays what, and every way to a song.
 */
final class PlanText {
  static final int WIDTH = 80;

  private final Result.Planned planned;
  private final CueSheet sheet;
  private final List<String> lines = new ArrayList<>();

  private PlanText(Result.Planned planned, CueSheet sheet) {
    this.planned = planned;
    this.sheet = sheet;
  }

  /** Everything; with {@code why} each step is followed by its reason. */
  static List<String> full(Result.Planned planned, CueSheet sheet, double limit, boolean why) {
    PlanText text = new PlanText(planned, sheet);
    text.heading();
    text.whoPlaysWhat();
    text.lines.addAll(RunningOrder.lines(sheet));
    sheet.cues().forEach(cue -> text.way(cue, why));
    text.lines.addAll(Totals.lines(planned, sheet, limit));
    return List.copyOf(text.lines);
  }

  /** The running order and the totals only. */
  static List<String> brief(Result.Planned planned, CueSheet sheet, double limit) {
    PlanText text = new PlanText(planned, sheet);
    text.heading();
    text.lines.addAll(RunningOrder.lines(sheet));
    text.lines.addAll(Totals.lines(planned, sheet, limit));
    return List.copyOf(text.lines);
  }

  private void heading() {
    Plan plan = planned.plan();
    int songs = plan.songs().size();
    String count = songs == 1 ? "1 song" : songs + " songs";
    fill(sheet.set() + ", " + count + " on " + sheet.rig(), "");
    if (!sheet.hasSetUp() && !sheet.jumpers().isEmpty()) {
      String stand = String.join("; ", sheet.jumpers());
      fill("Jumpers stay as they are and must have been set: " + stand, "");
    }
  }

  private void whoPlaysWhat() {
    title("Who plays what");
    for (Cue cue : sheet.cues()) {
      String casting = String.join("; ", cue.card().casting());
      String text = cue.song() + ": " + (casting.isEmpty() ? "as the patch names it" : casting);
      lines.addAll(Fill.lines(text, WIDTH, String.format("%3d  ", cue.number()), "       "));
    }
  }

  private void way(Cue cue, boolean why) {
    title(head(cue));
    if (cue.setUp()) {
      sheet.cautions().forEach(caution -> fill(caution, "  ! "));
      sheet.jumpers().forEach(jumper -> fill("SET jumper " + jumper, "  "));
    }
    if (cue.steps().isEmpty()) {
      fill("Nothing moves.", "  ");
    }
    for (Step step : cue.steps()) {
      if (cue.beginsTuning(step)) {
        list("Before tuning: ", cue.ear().before());
      }
      boolean mark = step.early() && !why;
      fill(step.text() + (mark ? " (early, song " + (step.forSong() + 1) + ")" : ""), "  ");
      if (why && step.moves() > 0) {
        fill(step.why(), "      ");
      }
    }
    list("Trust the tuning of: ", cue.ear().trusted());
    list("Mind: ", cue.ear().mind());
    cue.ear().level().ifPresent(level -> fill("Level: " + level, "  "));
    list("Gear: ", cue.card().gear());
    list("Waits unheard: ", cue.parked());
    list("Before you play, check: ", cue.lookAt());
    list("Listen for: ", cue.ear().listenFor());
  }

  private static String head(Cue cue) {
    String gap =
        cue.setUp() || cue.gapSeconds().isEmpty()
            ? ""
            : " of a gap of " + TimeText.of(cue.gapSeconds().getAsDouble());
    return cue.heading()
        + ": "
        + Totals.moves(cue.moves())
        + ", about "
        + TimeText.of(cue.seconds())
        + cue.ofRuns()
        + gap;
  }

  private void list(String label, List<String> items) {
    if (!items.isEmpty()) {
      fill(label + String.join("; ", items), "  ");
    }
  }

  private void title(String text) {
    lines.add("");
    fill(text, "");
  }

  private void fill(String text, String indent) {
    lines.addAll(Fill.lines(text, WIDTH, indent, " ".repeat(indent.length() + 2)));
  }
}
