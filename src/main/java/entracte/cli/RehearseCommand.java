package entracte.cli;

import entracte.check.PlayableSet;
import entracte.cue.CueSheet;
import entracte.plan.DirectWay;
import entracte.plan.Plan;
import entracte.plan.Result;
import entracte.rehearsal.Choice;
import entracte.rehearsal.Csv;
import entracte.rehearsal.Learned;
import entracte.rehearsal.Practice;
import entracte.rehearsal.RunLog;
import entracte.rehearsal.Summary;
import entracte.setlist.SetList;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

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

  @Option(
      names = "--odds",
      paramLabel = "PERCENT",
      defaultValue = "80",
      converter = Percent.class,
      description = "The odds of making each gap that you want; 80 unless you say.")
  private double safe;

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

  /** What was typed is checked before the search for a plan, which takes its time. */
  @Override
  public Integer call() {
    RunLog log = RunLog.beside(set.path());
    planning.soon();
    PlayableSet playable = Loader.playable(set.path(), streams);
    Choice choice = choice(playable.setList());
    int standing = stands == null ? DirectWay.START : SongNamed.in(playable.setList(), stands);
    try {
      if (what.csv || what.summary || what.imported != null || what.nights) {
        log.notes().forEach(note -> streams.complain("entracte: " + note));
      }
      if (what.csv) {
        Csv.lines(log).forEach(streams::line);
      } else if (what.imported != null) {
        elsewhere(playable, log).of(what.imported);
      } else if (what.nights) {
        elsewhere(playable, log).ofNightsBeside(set.path());
      } else if (what.summary) {
        Learned learned = Player.learned(playable.setList().rig(), set.path());
        sumUp(plan(playable), learned, learned.lastDay());
      } else {
        rehearse(plan(playable), log, choice, standing);
      }
    } catch (IOException e) {
      throw Player.trouble(log, e);
    }
    return ExitCode.DONE;
  }

  /** By rounds the plan is the one that the other commands show; by the clock it may not be. */
  private Plan plan(PlayableSet playable) {
    Result.Planned planned = new Search(streams, planning).plan(playable, set, search);
    if (planned.stopped() == Result.Stopped.TIME && !set.quiet()) {
      streams.complain(
          "entracte: the search was ended by the clock, so another start may plan other moves");
    }
    return planned.plan();
  }

  private TimesFromElsewhere elsewhere(PlayableSet playable, RunLog log) {
    return new TimesFromElsewhere(
        streams, hearing, playable, log, () -> Player.words(plan(playable), set.path()));
  }

  private void rehearse(Plan plan, RunLog log, Choice choice, int standing) throws IOException {
    Instant begun = hearing.clock().now().instant();
    Practice.Outcome outcome = practise(plan, log, choice, standing);
    sumUp(plan, outcome.learned(), begun);
    outcome.standing().ifPresent(now -> goOn(plan, standing, now));
  }

  private void goOn(Plan plan, int before, int now) {
    if (now != before && now != DirectWay.START) {
      streams.line("");
      String stands = plan.songs().get(now).song().name();
      String next = "The rig stands as " + stands + " leaves it. To go on from there next time:";
      LineTalk.fill(streams, next + " --stands " + (now + 1), hearing.width());
    }
  }

  private void sumUp(Plan plan, Learned learned, Instant since) {
    if (!set.quiet()) {
      streams.line("");
      CueSheet sheet = CueSheet.of(plan, learned);
      int width = hearing.width();
      Summary.lines(plan, sheet, learned, since, safe, width)
          .forEach(line -> LineTalk.fill(streams, line, width));
    }
  }

  private Practice.Outcome practise(Plan plan, RunLog log, Choice choice, int standing)
      throws IOException {
    Practice.Settings settings = new Practice.Settings(choice, !whole, standing);
    try (Talk talk = hearing.with(streams, plan.setList().rig().footSwitch())) {
      return Practice.rehearse(plan, log, settings, talk, hearing.clock());
    }
  }

  private Choice choice(SetList setList) {
    if (what.to != null) {
      return new Choice.To(SongNamed.in(setList, what.to) + 1);
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

  /** Odds between none and all, of a hundred. */
  static final class Percent implements ITypeConverter<Double> {
    private static final double WHOLE = 100;

    @Override
    public Double convert(String typed) {
      String figure = typed.replaceFirst("\\s*%$", "");
      if (!figure.matches("\\d{1,2}(\\.\\d+)?") || Double.parseDouble(figure) < 1) {
        throw new TypeConversionException("odds are from 1 to 99 of a hundred, not " + typed);
      }
      return Double.parseDouble(figure) / WHOLE;
    }
  }
}
