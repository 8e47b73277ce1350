package entracte.cli;

import entracte.cue.CueSheet;
import entracte.plan.Result;
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
      "  java -jar target/entracte.jar plan sets/orchard-barn --seconds 5 --why"
    })
final class PlanCommand implements Callable<Integer> {
  private final Streams streams;
  private final Planning planning;

  @Mixin private SetArgument set;
  @Mixin private SearchOptions search;

  @Option(names = "--json", description = "Print the plan as JSON, for other programs.")
  private boolean json;

  @Option(names = "--why", description = "Say of every move what it is good for.")
  private boolean why;

  PlanCommand(Streams streams, Planning planning) {
    this.streams = streams;
    this.planning = planning;
  }

  @Override
  public Integer call() {
    if (json && why) {
      streams.complain("entracte: --why has no effect with --json, which always gives the reasons");
    }
    Result.Planned planned = new Search(streams, planning).plan(set, search);
    CueSheet sheet = Player.words(planned.plan(), set.path());
    if (json) {
      streams.text(Json.write(PlanJson.of(planned, sheet, search.aim())));
    } else if (set.quiet()) {
      PlanText.brief(planned, sheet, search.seconds()).forEach(streams::line);
    } else {
      PlanText.full(planned, sheet, search.seconds(), why).forEach(streams::line);
    }
    return ExitCode.DONE;
  }
}
