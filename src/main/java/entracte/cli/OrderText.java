package entracte.cli;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.TimeText;
import entracte.plan.Ordered;
import entracte.plan.Result;
import entracte.print.Fill;
import java.util.ArrayList;
import java.util.List;

/** A proposed order as text for a screen of 80 columns. */
final class OrderText {
  private static final int LONGEST_NAME = 30;
  private static final String BETWEEN = "between songs";

  private final Ordered.Found found;
  private final CueSheet sheet;
  private final NameColumn names;
  private final List<String> lines = new ArrayList<>();

  private OrderText(Ordered.Found found, CueSheet sheet) {
    this.found = found;
    this.sheet = sheet;
    names = NameColumn.of(sheet.cues().stream().map(Cue::song), BETWEEN.length(), LONGEST_NAME);
  }

  /**
   * @param sheet of the proposed plan
   * @param quiet whether the songs are left out
   */
  static List<String> lines(Ordered.Found found, CueSheet sheet, boolean quiet) {
    OrderText text = new OrderText(found, sheet);
    if (!quiet) {
      text.table();
    }
    text.say(text.saving());
    text.say(text.known());
    return text.lines;
  }

  private void table() {
    say(sheet.set() + ", " + sheet.cues().size() + " songs on " + sheet.rig());
    lines.add("");
    lines.add(found.isWritten() ? "The order as written" : "Proposed order");
    row("", "song", "was", "moves", "takes", "gap");
    for (Cue cue : sheet.cues()) {
      row(
          Integer.toString(cue.number()),
          cue.song(),
          Integer.toString(found.order().get(cue.number() - 1) + 1),
          Integer.toString(cue.moves()),
          TimeText.of(cue.seconds()),
          RunningOrder.gap(cue));
    }
    String moves = Integer.toString(found.proposed().plan().moves());
    row("", BETWEEN, "", moves, TimeText.of(sheet.secondsBetweenSongs()), "");
    lines.add("");
  }

  private void row(String number, String song, String was, String moves, String takes, String gap) {
    lines.add(
        String.format("%3s  %s %4s %6s  %-11s %s", number, names.cell(song), was, moves, takes, gap)
            .stripTrailing());
  }

  private String saving() {
    int moves = found.proposed().plan().moves();
    if (found.written().isEmpty()) {
      return "No plan was found for the order as written. Proposed: " + Totals.moves(moves) + ".";
    }
    Result.Planned written = found.written().get();
    String was =
        "As written: "
            + Totals.moves(written.plan().moves())
            + " between songs"
            + (written.stopped() == Result.Stopped.TIME ? ", the best found in this time" : "");
    if (found.isWritten()) {
      return was + ". No better order was found.";
    }
    String rules = found.writtenPermitted() ? "" : ", but not in an order that your rules permit";
    return was + rules + ". Proposed: " + Totals.moves(moves) + difference() + ".";
  }

  private String difference() {
    int saved = found.saved();
    return saved == 0 ? "" : saved > 0 ? ", " + saved + " fewer" : ", " + -saved + " more";
  }

  private String known() {
    int open = found.proposed().plan().moves() - found.lowerBound();
    String bound = "Lower bound of every order permitted: " + found.lowerBound() + ". ";
    return found.proven()
        ? bound + "Proven: no order has fewer moves."
        : bound
            + "Not proven: a better order or plan could save at most "
            + Totals.moves(open)
            + ".";
  }

  private void say(String text) {
    lines.addAll(Fill.lines(text, PlanText.WIDTH, "", "  "));
  }
}
