package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.TimeText;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How all changeovers stand, in one line each. The song comes last, since its name may be long.
 *
 * <pre>
 *   to  runs    next     gap       odds     before  for 80 %  song
 *    2     -    0:45    0:45       50 %       34 %  2 more    Bread Clock
 *    3     1    0:52    1:15       95 %       46 %  safe      Blue Enamel
 * </pre>
 *
 * <p>A narrow screen has no room for columns; there each changeover is a sentence.
 */
final class Overview {
  /** What the columns need, the song's name among them. */
  private static final int TABLE = 72;

  private static final double EVEN = 0.5;
  private static final String NONE = "-";
  private static final String TRY_IT = "try it";
  private static final String KEY =
      "next: what the next run may take, in minutes and seconds; %s: how many more runs until these"
          + " are the odds%s.";

  private static final String UNTIMED = "; try it: so they look, but it was never timed";

  private final Learned learned;
  private final Learned before;
  private final boolean news;
  private final double safe;

  /**
   * @param before what was known before this rehearsal; its odds are told if something was learned
   * @param safe the odds that are wanted of each gap
   */
  Overview(Learned learned, Learned before, double safe) {
    this.safe = safe;
    this.learned = learned;
    this.before = before;
    this.news = before.timedRuns() < learned.timedRuns();
  }

  List<String> lines(List<Standing> standings, int width) {
    if (width < TABLE) {
      return standings.stream().map(this::sentence).toList();
    }
    List<String> lines = new ArrayList<>();
    lines.add(row("to", "runs", "next", "gap", "odds", "before", forSafe(), "song"));
    standings.forEach(standing -> lines.add(row(standing)));
    boolean untimed = standings.stream().anyMatch(s -> need(s).equals(TRY_IT));
    lines.add(String.format(KEY, forSafe(), untimed ? UNTIMED : ""));
    return lines;
  }

  private String row(Standing standing) {
    Cue cue = standing.cue();
    int runs = learned.runs(cue.steps());
    Standing earlier = new Standing(cue, before.outlook(cue.steps()));
    return row(
        Integer.toString(cue.number()),
        runs == 0 ? NONE : Integer.toString(runs),
        TimeText.clock(standing.outlook().typical(1)),
        cue.gapSeconds().isEmpty() ? NONE : TimeText.clock(cue.gapSeconds().getAsDouble()),
        odds(standing.odds()),
        odds(earlier.odds()),
        need(standing),
        cue.song());
  }

  private String sentence(Standing standing) {
    Cue cue = standing.cue();
    int runs = learned.runs(cue.steps());
    String head =
        cue.heading()
            + ": "
            + (runs == 0 ? "never timed" : runs == 1 ? "1 run" : runs + " runs")
            + ", next about "
            + TimeText.of(standing.outlook().typical(1));
    if (standing.odds().isEmpty()) {
      return head + ".";
    }
    Standing earlier = new Standing(cue, before.outlook(cue.steps()));
    String was = news ? " (" + odds(earlier.odds()) + " before)" : "";
    return head
        + " of "
        + TimeText.of(cue.gapSeconds().getAsDouble())
        + "; odds "
        + odds(standing.odds())
        + was
        + "; "
        + forSafe()
        + ": "
        + need(standing)
        + ".";
  }

  private String row(
      String to,
      String runs,
      String next,
      String gap,
      String odds,
      String earlier,
      String need,
      String song) {
    String before = news ? String.format("  %9s", earlier) : "";
    return String.format(
        "%4s  %4s  %6s  %6s  %9s%s  %-8s  %s", to, runs, next, gap, odds, before, need, song);
  }

  private static String odds(OptionalDouble odds) {
    return odds.isEmpty() ? NONE : Odds.text(odds.getAsDouble());
  }

  private String forSafe() {
    return "for " + Odds.text(safe);
  }

  private String need(Standing standing) {
    if (standing.odds().isEmpty()) {
      return NONE;
    }
    if (standing.odds().getAsDouble() >= safe) {
      return standing.outlook().runs() > 0 ? "safe" : TRY_IT;
    }
    Needed needed = standing.needed(safe);
    return needed.chance() < EVEN ? "hardly" : Math.max(1, needed.likely()) + " more";
  }
}
