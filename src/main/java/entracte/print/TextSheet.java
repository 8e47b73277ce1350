package entracte.print;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Step;
import entracte.cue.TimeText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The cue sheet as plain text, for any printer and any screen: the running order, the set-up, and a
 * card for each changeover, with a box before everything that hands do.
 */
public final class TextSheet {
  /** What a page of typewriter text holds between decent margins. */
  public static final int WIDTH = 72;

  private static final String BOX = "[ ] ";
  private static final String BELOW_BOX = "    ";

  private final CueSheet sheet;
  private final List<String> lines = new ArrayList<>();

  private TextSheet(CueSheet sheet) {
    this.sheet = sheet;
  }

  /** The lines of the sheet, none longer than {@link #WIDTH}. */
  public static List<String> lines(CueSheet sheet) {
    TextSheet text = new TextSheet(sheet);
    text.heading();
    text.runningOrder();
    sheet.cues().forEach(text::card);
    return List.copyOf(text.lines);
  }

  private void heading() {
    fill(sheet.set());
    lines.add("=".repeat(WIDTH));
    fill("Played on " + sheet.rig() + ". " + sheet.aboutTimes());
    if (!sheet.hasSetUp()) {
      labelled("Jumpers stay as they are and must have been set", sheet.jumpers());
    }
  }

  private void runningOrder() {
    title("Running order");
    for (Cue cue : sheet.cues()) {
      String label = String.format("%3d  ", cue.number());
      String about = String.join("; ", cue.card().lines());
      String text = about.isEmpty() ? cue.song() : cue.song() + ". " + about;
      lines.addAll(Fill.lines(text, WIDTH, label, " ".repeat(label.length())));
    }
  }

  private void card(Cue cue) {
    lines.add("");
    lines.add("-".repeat(WIDTH));
    fill(head(cue));
    if (cue.setUp()) {
      sheet.cautions().forEach(caution -> fill("! ", caution));
      if (!sheet.jumpers().isEmpty()) {
        title("Jumpers, power off");
        sheet.jumpers().forEach(jumper -> box("SET jumper " + jumper));
      }
    }
    steps(cue);
    after(cue);
  }

  private static String head(Cue cue) {
    String where = cue.setUp() ? "Set-up for " : "To ";
    String gap =
        cue.setUp() || cue.gapSeconds().isEmpty()
            ? ""
            : " of a gap of " + TimeText.of(cue.gapSeconds().getAsDouble());
    String moves = cue.moves() == 1 ? "1 move" : cue.moves() + " moves";
    return where
        + cue.number()
        + " "
        + cue.song().toUpperCase(java.util.Locale.ROOT)
        + ": "
        + moves
        + ", about "
        + TimeText.of(cue.seconds())
        + gap;
  }

  private void steps(Cue cue) {
    lines.add("");
    String last = "";
    for (Step step : cue.steps()) {
      String part = cue.setUp() ? part(step, cue.song()).orElse(last) : "";
      if (!part.equals(last)) {
        title(part);
        last = part;
      }
      box(step.text() + (step.early() ? " (early, for song " + (step.forSong() + 1) + ")" : ""));
    }
    if (cue.steps().isEmpty()) {
      fill("Nothing moves.");
    }
  }

  /** The part of the set-up that a step belongs to; empty where it only goes on. */
  private static Optional<String> part(Step step, String song) {
    return switch (step.verb()) {
      case LOWER, RAISE -> Optional.empty();
      case PULL -> Optional.of("Cords that go");
      case MOVE, PLUG ->
          Optional.of(step.early() ? "Cords that wait for later songs" : "Cords for " + song);
      case SWITCH -> Optional.of("Switches");
      case TURN -> Optional.of("Knobs");
      case TUNE -> Optional.of("Tuning");
    };
  }

  private void after(Cue cue) {
    lines.add("");
    labelled("Gear", cue.card().gear());
    labelled("Who plays", cue.card().casting());
    labelled("Waits unheard", cue.parked());
    labelled("Before you play, check", cue.lookAt());
    cue.card().lines().forEach(this::fill);
  }

  private void labelled(String label, List<String> items) {
    if (!items.isEmpty()) {
      fill(label + ": " + String.join("; ", items) + ".");
    }
  }

  private void title(String text) {
    lines.add("");
    fill(text);
  }

  private void box(String text) {
    lines.addAll(Fill.lines(text, WIDTH, BOX, BELOW_BOX));
  }

  private void fill(String text) {
    fill("", text);
  }

  private void fill(String first, String text) {
    lines.addAll(Fill.lines(text, WIDTH, first, first.isEmpty() ? "    " : "  "));
  }
}
