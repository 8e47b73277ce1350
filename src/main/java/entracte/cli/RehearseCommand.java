package entracte.cli;

import entracte.cue.CueSheet;
import entracte.plan.DirectWay;
import entracte.plan.Plan;
import entracte.rehearsal.Choice;
import entracte.rehearsal.Csv;
import entracte.rehearsal.Learned;
import entracte.rehearsal.Nights;
import entracte.rehearsal.Practice;
import entracte.rehearsal.RunLog;
import entracte.rehearsal.Summary;
import entracte.rehearsal.TimedMoves;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Practises changeovers against the clock. */
@Command(
    name = "rehearse",
    sortOptions = false,
    description = {
      "Practises changeovers against the clock: brings the rig to where one begins, takes the time,"
          + " writes it into rehearsal.log beside the set, and says how the odds stand.",
      "Without an option it takes the changeover that practice helps most, and the next, until you"
          + " end it. While the clock runs, Enter, space, page down or a foot on the rig's"
          + " foot switch ends a step, s counts a slip, u or page up goes back a step, x stops. In"
          + " a terminal one key is enough; where there is none, lines are read."
    },
    footer = {
      "",
      "Examples:",
      "  java -jar target/entracte.jar rehearse sets/kitchen-table",
      "  java -jar target/entracte.jar rehearse sets/orchard-barn --worst 3",
      "  java -jar target/entracte.jar rehearse sets/orchard-barn --summary"
    })
final class RehearseCommand implements Callable<Integer> {
  private final Streams streams;
  private final Planning planning;
  private final Hearing hearing;

  @Mixin private SetArgument set;

  @ArgGroup private What what = new What();

  @Option(names = "--whole", description = "Take one time for all steps, not one for each.")
  private boolean whole;

  @Option(
      names = "--stands",
      paramLabel = "SONG",
      description = "The rig stands as this song leaves it; nothing is plugged unless you say.")
  private String stands;

  @Mixin private SearchOptions search;

  /** What to do; one thing at a time. */
  static final class What {
    @Option(names = "--to", paramLabel = "SONG", description = "Practise the way to this song.")
    private String to;

    @Option(
        names = "--worst",
        paramLabel = "N",
        description = "Practise the N that run over their gaps most.")
    private Integer worst;

    @Option(names = "--anywhere", description = "Begin at a song drawn by lot, and go on from it.")
    private boolean anywhere;

    @Option(names = "--all", description = "Practise the whole set in its order.")
    private boolean all;

    @Option(names = "--summary", description = "Only say how everything stands.")
    private boolean summary;

    @Option(names = "--csv", description = "Print all times for a spreadsheet.")
    private boolean csv;

    @Option(
        names = "--import",
        paramLabel = "FILE",
        description = "Add times taken on stage: lines of changeover, move, seconds.")
    private Path imported;

    @Option(
        names = "--nights",
        description =
            "Add the times of the nights whose journals the stage left beside the set; what was"
                + " added before is passed over.")
    private boolean nights;
  }

  RehearseCommand(Streams streams, Planning planning, Hearing hearing) {
    this.streams = streams;
    this.planning = planning;
    this.hearing = hearing;
  }

  @Override
  public Integer call() {
    RunLog log = RunLog.beside(set.path());
    try {
      if (what.csv) {
        Loader.playable(set.path(), streams);
        Csv.lines(log).forEach(streams::line);
        return ExitCode.DONE;
      }
      Plan plan = new Search(streams, planning).plan(set, search).plan();
      if (what.imported != null) {
        bringIn(plan, log);
      } else if (what.nights) {
        bringInNights(plan, log);
      } else {
        rehearse(plan, log);
      }
    } catch (IOException e) {
      throw Player.trouble(log, e);
    }
    return ExitCode.DONE;
  }

  private void rehearse(Plan plan, RunLog log) throws IOException {
    if (what.summary) {
      Learned learned = Player.learned(plan.setList().rig(), set.path());
      sumUp(plan, learned, learned.lastDay());
      return;
    }
    int standing = stands == null ? DirectWay.START : number(plan, stands) - 1;
    Instant begun = hearing.clock().now().instant();
    Practice.Outcome outcome = practise(plan, log, standing);
    sumUp(plan, outcome.learned(), begun);
    if (outcome.standing() != standing) {
      streams.line("");
      LineTalk.fill(
          streams,
          "The rig stands as "
              + plan.songs().get(outcome.standing()).song().name()
              + " leaves it. To go on from there next time: --stands "
              + (outcome.standing() + 1));
    }
  }

  private void sumUp(Plan plan, Learned learned, Instant since) {
    if (!set.quiet()) {
      streams.line("");
      CueSheet sheet = CueSheet.of(plan, learned);
      Summary.lines(plan, sheet, learned, since, PlanText.WIDTH)
          .forEach(line -> LineTalk.fill(streams, line));
    }
  }

  private Practice.Outcome practise(Plan plan, RunLog log, int standing) throws IOException {
    Practice.Settings settings = new Practice.Settings(choice(plan), !whole, standing);
    try (Talk talk = hearing.with(streams, plan.setList().rig().footSwitch())) {
      return Practice.rehearse(plan, log, settings, talk, hearing.clock());
    }
  }

  private Choice choice(Plan plan) {
    if (what.to != null) {
      return new Choice.To(number(plan, what.to));
    }
    if (what.worst != null) {
      if (what.worst < 1) {
        throw Stop.wrongUsage("--worst " + what.worst + " leaves nothing", "Give 1 or more.");
      }
      return new Choice.Worst(what.worst);
    }
    if (what.anywhere) {
      return new Choice.Anywhere(search.seed());
    }
    return what.all ? new Choice.All() : new Choice.MostHelped();
  }

  private static int number(Plan plan, String song) {
    for (int i = 0; i < plan.songs().size(); i++) {
      String name = plan.songs().get(i).song().name();
      if (name.equalsIgnoreCase(song) || Integer.toString(i + 1).equals(song)) {
        return i + 1;
      }
    }
    throw Stop.wrongUsage(
        "no song of the set is called " + song,
        "Give its name or its number, 1 to " + plan.songs().size() + ".");
  }

  private void bringInNights(Plan plan, RunLog log) throws IOException {
    StageTimes.Told told = StageTimes.beside(set.path(), ShowMaker.show(plan.setList()));
    told.notes().forEach(streams::line);
    int added =
        Nights.into(log, told.played(), Player.words(plan, set.path()), plan.setList().rig());
    int known = told.played().size() - added;
    streams.line(
        "Added "
            + (added == 1 ? "1 run" : added + " runs")
            + " from the stage"
            + (known == 0 ? "." : "; " + known + " had been added before."));
  }

  private void bringIn(Plan plan, RunLog log) throws IOException {
    Path file = what.imported;
    if (!Files.isReadable(file)) {
      throw Stop.trouble("there is no " + file + " to read", "");
    }
    TimedMoves.Imported done;
    try {
      done =
          TimedMoves.into(
              log,
              TimedMoves.read(Files.readAllLines(file)),
              Player.words(plan, set.path()),
              plan.setList().rig(),
              hearing.clock().now().instant());
    } catch (IllegalArgumentException e) {
      throw Stop.trouble(file + ": " + e.getMessage(), "");
    }
    streams.line(
        "Added "
            + (done.runs() == 1 ? "1 run" : done.runs() + " runs")
            + (done.leftOver() == 0
                ? "."
                : "; lines that belong to no whole run of this plan: " + done.leftOver() + "."));
  }
}
