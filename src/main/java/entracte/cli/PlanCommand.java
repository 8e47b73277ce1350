package entracte.cli;

import entracte.check.PlayableSet;
import entracte.cue.CueSheet;
import entracte.plan.Plan;
import entracte.plan.Result;
import entracte.print.Fill;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans a set and prints the plan. */
@Command(
    name = "plan",
    sortOptions = false,
    description = {
      "Plans the fewest moves between songs, and prints who plays what, the running order, the"
          + " set-up, every changeover in the order of the hands, and how good the plan is"
          + " known to be."
    },
    footer = {
      "",
      "Examples:",
      "  java -jar target/entracte.jar plan sets/kitchen-table",
      "  java -jar target/entracte.jar plan sets/orchard-barn --seconds 5 --why",
      "  java -jar target/entracte.jar plan sets/kitchen-table --watch",
      "  java -jar target/entracte.jar plan sets/kitchen-table --save stands.yaml \\",
      "    --after Kettle",
      "  java -jar target/entracte.jar plan sets/kitchen-table --from stands.yaml"
    })
final class PlanCommand implements Callable<Integer> {
  private final Streams streams;
  private final Planning planning;
  private final Hearing hearing;

  @Mixin private SetArgument set;
  @Mixin private SearchOptions search;

  @Option(names = "--json", description = "Print the plan as JSON, for other programs.")
  private boolean json;

  @Option(names = "--why", description = "Say of every move what it is good for.")
  private boolean why;

  @Option(
      names = "--watch",
      description =
          "Plan again whenever a file of the set is saved, until Ctrl-C. While a file has"
              + " mistakes, they are told and the last plan stands.")
  private boolean watch;

  @Mixin private SavedState save;

  PlanCommand(Streams streams, Planning planning, Hearing hearing) {
    this.streams = streams;
    this.planning = planning;
    this.hearing = hearing;
  }

  @Override
  public Integer call() throws InterruptedException {
    if (json && why) {
      streams.complain("entracte: --why has no effect with --json, which always gives the reasons");
    }
    if (watch) {
      save.demandNone();
      return new Watch(streams, hearing.saves()).plan(set.path(), search.from(), this::plan);
    }
    plan();
    return ExitCode.DONE;
  }

  private Plan plan() {
    planning.soon();
    PlayableSet playable = Loader.playable(set.path(), streams);
    save.demandPossible(playable.setList());
    Search.Compared compared = new Search(streams, planning).compared(playable, set, search);
    Result.Planned planned = compared.planned();
    CueSheet sheet = Player.words(planned.plan(), set.path());
    if (json) {
      Map<String, Object> object = PlanJson.of(planned, sheet, search.aim());
      compared.saving().ifPresent(saving -> object.put("savedSeconds", saving.saved()));
      streams.text(Json.write(object));
    } else if (set.quiet()) {
      PlanText.brief(planned, sheet, search.seconds()).forEach(streams::line);
    } else {
      PlanText.full(planned, sheet, search.seconds(), why).forEach(streams::line);
    }
    compared.saving().filter(saving -> !json).ifPresent(this::tell);
    save.write(planned.plan()).filter(wrote -> !json && !set.quiet()).ifPresent(streams::line);
    return planned.plan();
  }

  private void tell(Saving saving) {
    String text = saving.text(Player.words(saving.fewest(), set.path()));
    Fill.lines(text, PlanText.WIDTH, "", "  ").forEach(streams::line);
  }
}
