package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.TimeText;
import entracte.plan.Plan;
import entracte.rehearsal.Law.Family;
import entracte.setlist.Slot;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a rehearsal has got to, as plain lines: each changeover that was timed, all of them in a
 * glance, the whole set, what comes next.
 */
public final class Summary {
  /** Below so many runs a curve tells nothing of its law. */
  private static final int FEWEST_FOR_A_LAW = 4;

  private static final double EVEN = 0.5;

  /** Odds below these say nothing of a law. */
  private static final double TELLING = 0.65;

  private final Plan plan;
  private final CueSheet sheet;
  private final Learned learned;
  private final Learned before;
  private final double safe;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private Summary(
      Plan plan, CueSheet sheet, Learned learned, Instant since, double safe, int width) {
    this.plan = plan;
    this.sheet = sheet;
    this.learned = learned;
    this.before = learned.before(since);
    this.safe = safe;
    this.width = width;
  }

  /**
   * The summary, in lines that may be filled to a width.
   *
   * @param since when this rehearsal began: odds are told for then and for now
   * @param safe the odds that are wanted of each gap
   * @param width of the screen, for plots and columns
   */
  public static List<String> lines(
      Plan plan, CueSheet sheet, Learned learned, Instant since, double safe, int width) {
    Summary summary = new Summary(plan, sheet, learned, since, safe, width);
    summary.lines.add(sheet.set() + ". " + learned.origin());
    List<Standing> standings = Ranking.standings(sheet, learned);
    standings.forEach(summary::changeover);
    summary.lines.add("");
    summary.lines.addAll(new Overview(learned, summary.before, safe).lines(standings, width));
    summary.otherWays();
    summary.lines.addAll(OwnHands.lines(sheet, learned));
    summary.wholeSet();
    return List.copyOf(summary.lines);
  }

  /** One that was never timed has no more to tell than its line of the overview. */
  private void changeover(Standing standing) {
    Cue cue = standing.cue();
    List<Run> runs = learned.history(cue.steps());
    if (runs.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add(head(cue));
    lines.addAll(Plot.lines(runs, cue.gapSeconds(), width));
    lines.add("  " + times(standing, runs));
    standing.odds().ifPresent(odds -> lines.add("  " + odds(standing, odds)));
    if (runs.size() >= FEWEST_FOR_A_LAW) {
      lines.add("  " + law(standing.outlook()));
    }
  }

  private static String head(Cue cue) {
    String gap =
        cue.gapSeconds().isEmpty() ? "" : ", gap " + TimeText.of(cue.gapSeconds().getAsDouble());
    return "To " + cue.number() + " " + cue.song() + ": " + moves(cue.moves()) + gap;
  }

  static String moves(int moves) {
    return moves == 1 ? "1 move" : moves + " moves";
  }

  private static String times(Standing standing, List<Run> runs) {
    Outlook outlook = standing.outlook();
    String next =
        "next about "
            + TimeText.of(outlook.typical(1))
            + ", four times in five from "
            + TimeText.of(outlook.below(0.1, 1))
            + " to "
            + TimeText.of(outlook.below(0.9, 1));
    double best = runs.stream().mapToDouble(Run::seconds).min().orElseThrow();
    int slips = runs.stream().mapToInt(Run::slips).sum();
    String last = TimeText.of(runs.get(runs.size() - 1).seconds());
    return (runs.size() == 1
            ? "1 run of " + last
            : runs.size() + " runs, last " + last + ", best " + TimeText.of(best))
        + RunWords.slips(slips)
        + "; "
        + next
        + ".";
  }

  private String odds(Standing standing, double now) {
    Standing earlier = new Standing(standing.cue(), before.outlook(standing.cue().steps()));
    return "Odds of making the gap: "
        + Odds.text(now)
        + was(earlier.odds().orElseThrow())
        + ". "
        + needed(standing, now);
  }

  /** Told only if something was learned since. */
  private String was(double odds) {
    boolean news = before.timedRuns() < learned.timedRuns();
    return news ? " (" + Odds.text(odds) + " before)" : "";
  }

  private String needed(Standing standing, double now) {
    String wanted = Odds.text(safe);
    if (now >= safe) {
      return "Safe: " + wanted + " or more.";
    }
    Needed needed = standing.needed(safe);
    if (needed.chance() < EVEN) {
      return "Practice alone hardly gets it to " + wanted + ": plan it otherwise.";
    }
    int few = Math.max(1, needed.few());
    String well = needed.many() <= few ? "" : ": " + few + " if it goes well, ";
    String badly = well.isEmpty() ? "" : badly(needed.many());
    return "For " + wanted + " about " + more(Math.max(1, needed.likely())) + well + badly + ".";
  }

  private static String badly(int many) {
    return many >= Needed.MOST ? "but practice alone may not do it" : many + " if it goes badly";
  }

  private static String more(int runs) {
    return runs == 1 ? "1 more run" : runs + " more runs";
  }

  private static String law(Outlook outlook) {
    double exponential = outlook.favours(Family.EXPONENTIAL);
    boolean leading = exponential > EVEN;
    if (Math.max(exponential, 1 - exponential) < TELLING) {
      return "The times do not tell yet whether they fall by a power law or an exponential one.";
    }
    return "The times fall more like "
        + (leading ? "an exponential law" : "a power law")
        + " than "
        + (leading ? "a power law" : "an exponential one")
        + ", odds "
        + Odds.text(leading ? exponential : 1 - exponential)
        + ".";
  }

  private void otherWays() {
    sheet.cues().forEach(cue -> OtherWays.to(cue, learned).ifPresent(lines::add));
  }

  private void wholeSet() {
    lines.add("");
    SetLength length = new SetLength(plan, sheet, learned);
    double earlier = new SetLength(plan, sheet, before).everyGap();
    lines.add(
        "Odds of making every gap in one night: "
            + Odds.text(length.everyGap())
            + was(earlier)
            + ".");
    lines.addAll(length(length));
    Ranking.byGain(sheet, learned).stream()
        .findFirst()
        .ifPresent(best -> lines.add("Practise next: " + next(best)));
  }

  private static String next(Standing best) {
    String gain =
        best.overSaved() * 10 >= 1
            ? "one more run takes some "
                + tenths(best.overSaved())
                + " s off what it may run over, good nights and bad taken together."
            : "one more run makes it some " + tenths(best.secondsSaved()) + " s quicker.";
    return "the way to " + best.cue().number() + " " + best.cue().song() + "; " + gain;
  }

  private static String tenths(double seconds) {
    return String.format(java.util.Locale.ROOT, "%.1f", Math.max(0, seconds));
  }

  private List<String> length(SetLength length) {
    List<String> told = new ArrayList<>();
    String about =
        "The set takes about "
            + TimeText.of(length.typical())
            + ", four times in five from "
            + TimeText.of(length.low())
            + " to "
            + TimeText.of(length.high());
    Slot slot = plan.setList().slot();
    if (slot.seconds().isEmpty()) {
      told.add(about + ".");
    } else {
      double room = slot.seconds().getAsDouble() - slot.reserveSeconds();
      told.add(about + "; odds of ending in " + room(slot) + ": " + room(length, room) + ".");
      length.drops(room).stream()
          .findFirst()
          .ifPresent(
              drop ->
                  told.add(
                      "If it runs late, leave out "
                          + drop.number()
                          + " "
                          + drop.song()
                          + " first: that saves "
                          + TimeText.of(drop.savedSeconds())
                          + "."));
    }
    if (sheet.cues().stream().anyMatch(this::isFirst)) {
      told.add(
          "What was never timed counts here as a first run takes; plan counts practised hands.");
    }
    if (!length.untimed().isEmpty()) {
      told.add("Counted as nothing, for want of a length: " + String.join(", ", length.untimed()));
    }
    return told;
  }

  private boolean isFirst(Cue cue) {
    return !cue.setUp() && !cue.steps().isEmpty() && learned.runs(cue.steps()) == 0;
  }

  private static String room(SetLength length, double room) {
    return Odds.text(length.odds(room));
  }

  private static String room(Slot slot) {
    String whole = "its slot of " + TimeText.of(slot.seconds().getAsDouble());
    return slot.reserveSeconds() == 0
        ? whole
        : whole + " with " + TimeText.of(slot.reserveSeconds()) + " to spare";
  }
}
