package entracte.cli;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.TimeText;
import entracte.plan.Aim;
import entracte.plan.Result;
import entracte.print.Fill;
import entracte.rig.Figures;
import java.util.ArrayList;
import java.util.List;

/** What a plan comes to, and what is known about better ones. Nothing else may be called proven. */
final class Totals {
  private final Result.Planned planned;
  private final CueSheet sheet;
  private final double limit;

  private Totals(Result.Planned planned, CueSheet sheet, double limit) {
    this.planned = planned;
    this.sheet = sheet;
    this.limit = limit;
  }

  /**
   * @param limit the seconds that the search was given
   */
  static List<String> lines(Result.Planned planned, CueSheet sheet, double limit) {
    Totals totals = new Totals(planned, sheet, limit);
    List<String> lines = new ArrayList<>();
    lines.add("");
    for (String text : List.of(totals.between(), totals.setUp(), totals.gaps())) {
      if (!text.isEmpty()) {
        lines.addAll(Fill.lines(text, PlanText.WIDTH, "", "  "));
      }
    }
    return lines;
  }

  static String moves(int moves) {
    return moves == 1 ? "1 move" : moves + " moves";
  }

  private String between() {
    int moves = planned.plan().moves();
    if (planned.aim() == Aim.FASTEST) {
      return timed();
    }
    if (planned.aim() == Aim.EVEN) {
      return even();
    }
    String total = "Between songs: " + moves(moves) + "; lower bound " + planned.lowerBound() + ".";
    return planned.proven()
        ? total + " Proven: no plan has fewer."
        : total + " " + open(moves - planned.lowerBound()) + " " + stopped();
  }

  /** Seconds are the least or nothing is known of them; moves keep their bound. */
  private String timed() {
    return "Between songs: "
        + moves(planned.plan().moves())
        + ", about "
        + TimeText.of(sheet.secondsBetweenSongs())
        + (planned.quickest()
            ? ". Proven: no plan is quicker for these hands, each move taken at its average time at"
                + " its place, and no cord plugged but for a song that needs it. No plan has fewer"
                + " than "
            : ". Planned for the fewest seconds, of which nothing is proven; no plan has fewer"
                + " than ")
        + moves(planned.lowerBound())
        + ". "
        + stopped();
  }

  /** Of overruns nothing is known but that none is less than none. */
  private String even() {
    boolean fits = sheet.cues().stream().allMatch(cue -> cue.wholeOverrun() == 0);
    return "Between songs: "
        + moves(planned.plan().moves())
        + ". Planned to keep within the gaps first"
        + (fits
            ? ", and it does. No plan has fewer moves than "
            : ", of which nothing is proven; no plan has fewer moves than ")
        + planned.lowerBound()
        + ". "
        + stopped();
  }

  private String setUp() {
    boolean any = sheet.cues().stream().anyMatch(Cue::setUp);
    if (!any) {
      return "";
    }
    int moves = planned.plan().setUpMoves();
    String total = "Set-up: " + moves(moves) + "; lower bound " + planned.setUpLowerBound() + ". ";
    if (planned.setUpProven()) {
      return total + "Proven: no plan with so few moves between songs has fewer.";
    }
    return total
        + openInSetUp(moves - planned.setUpLowerBound())
        + (planned.proven() ? " " + stopped() : "");
  }

  /** The bound counts on the moves between songs coming first. */
  private String openInSetUp(int saved) {
    if (planned.aim() != Aim.FEWEST) {
      return "The bound is for plans with the fewest moves between songs.";
    }
    return saved > 0
        ? open(saved)
        : "No better plan has fewer; one with fewer moves between songs may have more.";
  }

  private static String open(int saved) {
    return "Not proven: a better plan could save at most " + moves(saved) + ".";
  }

  private String stopped() {
    return switch (planned.stopped()) {
      case PROVEN -> "The search has looked at everything it knows how to.";
      case TIME ->
          "The search stopped at its limit of "
              + Figures.plain(limit)
              + " s, so another run may find another plan; --seconds gives it more.";
      case ROUNDS -> "The search stopped after its usual rounds; --seconds gives it more.";
      case CANCELLED -> "The search was stopped by hand.";
    };
  }

  private String gaps() {
    List<Cue> over = sheet.cues().stream().filter(cue -> cue.wholeOverrun() > 0).toList();
    if (over.isEmpty()) {
      return sheet.aboutTimes();
    }
    long seconds = over.stream().mapToLong(Cue::wholeOverrun).sum();
    String gaps = over.size() == 1 ? "1 gap is" : over.size() + " gaps are";
    return gaps + " too short, by " + TimeText.of(seconds) + " in all. " + sheet.aboutTimes();
  }
}
