package entracte.cli;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.TimeText;
import entracte.print.Fill;
import java.util.ArrayList;
import java.util.List;

/** The songs in their order, with the moves and the seconds that lead to each, against its gap. */
final class RunningOrder {
  private static final int LONGEST_NAME = 36;

  private static final String BETWEEN = "between songs";

  private static final String COUNTED =
      "Moves: 1 for each plug out, plug in, TURN and SWITCH; so PULL, PLUG and MOVE (a plug from"
          + " jack to jack) are 2. LOWER, TUNE, RAISE and SET are not counted.";

  private final NameColumn names;

  /** Whether any time comes from runs, so that they have a column. */
  private final boolean timed;

  private RunningOrder(CueSheet sheet) {
    timed = sheet.cues().stream().anyMatch(cue -> cue.runs() > 0);
    names =
        NameColumn.of(
            sheet.cues().stream().map(RunningOrder::title), BETWEEN.length(), LONGEST_NAME);
  }

  static List<String> lines(CueSheet sheet) {
    RunningOrder order = new RunningOrder(sheet);
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add("Running order");
    lines.add(order.row("", "song", "moves", "takes", "runs", "gap"));
    sheet.cues().forEach(cue -> lines.add(order.row(cue)));
    List<Cue> counted = sheet.betweenSongs();
    if (counted.size() > 1) {
      int moves = counted.stream().mapToInt(Cue::moves).sum();
      String takes = TimeText.of(sheet.secondsBetweenSongs());
      lines.add(order.row("", BETWEEN, Integer.toString(moves), takes, "", ""));
    }
    sheet.slot().ifPresent(sum -> lines.addAll(Fill.lines(sum, PlanText.WIDTH, "", "  ")));
    lines.addAll(Fill.lines(COUNTED, PlanText.WIDTH, "", "  "));
    return lines;
  }

  private static String title(Cue cue) {
    return cue.song() + (cue.card().encore() ? " (encore)" : "");
  }

  private String row(Cue cue) {
    return row(
        Integer.toString(cue.number()),
        title(cue),
        Integer.toString(cue.moves()),
        TimeText.of(cue.seconds()),
        cue.runs() == 0 ? "-" : Integer.toString(cue.runs()),
        gap(cue));
  }

  /** The gap that the musician allows before a song, and how far it is overrun. */
  static String gap(Cue cue) {
    if (cue.setUp()) {
      return "set-up, nobody waits";
    }
    if (cue.gapSeconds().isEmpty()) {
      return "";
    }
    String gap = TimeText.of(cue.gapSeconds().getAsDouble());
    long over = cue.wholeOverrun();
    return over == 0 ? gap : gap + ", " + TimeText.of(over) + " too short";
  }

  private String row(
      String number, String song, String moves, String takes, String runs, String gap) {
    String column = timed ? String.format("%4s  ", runs) : "";
    return String.format(
            "%3s  %s %6s  %-12s %s%s", number, names.cell(song), moves, takes, column, gap)
        .stripTrailing();
  }
}
