package entracte.cli;

import entracte.cue.CueSheet;
import entracte.cue.TimeText;
import entracte.plan.Plan;
import entracte.plan.Tempo;
import java.util.Locale;

/**
 * What planning for the fewest seconds gains over the plan of the fewest moves, as the planner
 * counts: the moves alone, each by the average way of the hand to its place.
 *
 * @param fewest the plan of the fewest moves
 * @param seconds between songs, of the plan that was found
 * @param fewestSeconds the same of the plan of the fewest moves
 */
record Saving(Plan fewest, double seconds, double fewestSeconds) {
  private static final double TENTHS = 10;

  static Saving of(Plan found, Plan fewest, Tempo tempo) {
    return new Saving(fewest, found.seconds(tempo), fewest.seconds(tempo));
  }

  /** In tenths, as both are printed, so that they and their difference agree. */
  double saved() {
    return (tenths(fewestSeconds) - tenths(seconds)) / TENTHS;
  }

  private static long tenths(double seconds) {
    return Math.round(seconds * TENTHS);
  }

  /**
   * In words.
   *
   * @param sheet the plan of the fewest moves, by the same hands
   */
  String text(CueSheet sheet) {
    String other =
        "the plan of the fewest moves ("
            + Totals.moves(fewest.moves())
            + ", about "
            + TimeText.of(sheet.secondsBetweenSongs())
            + ")";
    return saved() > 0
        ? String.format(
            Locale.ROOT,
            "Against %s it saves %.1f s: the moves alone take %.1f s instead of %.1f s. Tuning, the"
                + " true ways of the hand, and what was timed of one plan only are not in these.",
            other,
            saved(),
            seconds,
            fewestSeconds)
        : String.format(
            Locale.ROOT,
            "Against %s it saves nothing: the moves alone take %.1f s in both.",
            other,
            fewestSeconds);
  }
}
