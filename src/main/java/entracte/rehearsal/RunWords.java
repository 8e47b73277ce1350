package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.TimeText;
import java.util.Locale;

/** What is said before and after a timed run. */
final class RunWords {
  private static final double LEAST = 0.05;

  private RunWords() {}

  /** {@code To 3 Late Bus: 10 moves, about 60 s of a gap of 40 s; odds of making it 12 %.} */
  static String announce(Cue cue, Outlook outlook) {
    String head =
        "To "
            + cue.number()
            + " "
            + cue.song()
            + ": "
            + Summary.moves(cue.moves())
            + ", "
            + about(cue, outlook);
    if (cue.setUp() || cue.gapSeconds().isEmpty()) {
      return head + ".";
    }
    double gap = cue.gapSeconds().getAsDouble();
    String odds = Odds.text(outlook.odds(gap, 1));
    String against = outlook.runs() > 0 ? " of a gap of " : "; gap ";
    return head + against + TimeText.of(gap) + "; odds of making it " + odds + ".";
  }

  /**
   * {@code about 52 s}; for the first run {@code about 1 min 18 s the first time (practised, 59
   * s)}, since a plan tells the seconds of practised hands.
   */
  static String about(Cue cue, Outlook outlook) {
    String about = "about " + TimeText.of(outlook.typical(1));
    return outlook.runs() > 0
        ? about
        : about + " the first time (practised, " + TimeText.of(cue.seconds()) + ")";
  }

  /** {@code 41.2 s, 1 slip; 4 s to spare.} */
  static String result(Cue cue, Run run) {
    String took = took(run) + slips(run.slips());
    if (cue.setUp() || cue.gapSeconds().isEmpty()) {
      return took + ".";
    }
    double spare = cue.gapSeconds().getAsDouble() - run.seconds();
    return took + "; " + exactly(Math.abs(spare)) + (spare >= 0 ? " to spare." : " too long.");
  }

  /** Less than a second is told in tenths. */
  private static String exactly(double seconds) {
    return seconds >= LEAST && seconds < 1
        ? String.format(Locale.ROOT, "%.1f s", seconds)
        : TimeText.of(seconds);
  }

  /** {@code 4.6 s is far quicker than the 1 min 18 s to be expected; was that all of it?}. */
  static String doubted(Run run, double expected) {
    return took(run)
        + " is far quicker than the "
        + TimeText.of(expected)
        + " that were to be expected. Was that the whole changeover?";
  }

  static String took(Run run) {
    return String.format(Locale.ROOT, "%.1f s", run.seconds());
  }

  /** {@code , 2 slips}; nothing if there were none. */
  static String slips(int slips) {
    return switch (slips) {
      case 0 -> "";
      case 1 -> ", 1 slip";
      default -> ", " + slips + " slips";
    };
  }

  /** {@code Odds of the gap next time: 62 % (34 % before).} */
  static String odds(double now, double before) {
    return "Odds of the gap next time: " + Odds.text(now) + " (" + Odds.text(before) + " before).";
  }
}
