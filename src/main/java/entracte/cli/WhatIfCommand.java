package entracte.cli;

import entracte.check.PlayableSet;
import entracte.plan.Asker;
import entracte.plan.Options;
import entracte.plan.Result;
import entracte.plan.Start;
import entracte.plan.WhatIf;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what another rig would be worth. */
@Command(
    name = "whatif",
    sortOptions = false,
    description = {
      "Tells how many moves one more module of each kind would save, or more cords; and, for every"
          + " module, what is left of the set if it dies.",
      "Every answer is what a short search found: the saving may be greater."
    },
    footer = {"", "Example:", "  java -jar target/entracte.jar whatif sets/kitchen-table"})
final class WhatIfCommand implements Callable<Integer> {
  private final Streams streams;
  private final Planning planning;

  @Mixin private SetArgument set;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      converter = SearchOptions.Seed.class,
      description = "Look in another order (1 unless you say).")
  private long seed;

  @Option(names = "--json", description = "Print the answers as JSON, for other programs.")
  private boolean json;

  WhatIfCommand(Streams streams, Planning planning) {
    this.streams = streams;
    this.planning = planning;
  }

  @Override
  public Integer call() {
    planning.soon();
    PlayableSet playable = Loader.playable(set.path(), streams);
    Options options = Options.defaults().withSeed(seed).withRounds(1);
    Result.Planned base = new Search(streams, planning).plan(playable, options, set.quiet());
    ProgressLine progress = new ProgressLine(streams);
    boolean shows = streams.progress() && !set.quiet();
    WhatIf.Answers answers =
        Asker.ask(
            playable,
            base,
            options.withStart(Start.bare()),
            (done, all) -> {
              if (shows) {
                progress.say(done + " of " + all + " questions answered");
              }
            });
    progress.clear();
    if (json) {
      streams.text(Json.write(WhatIfJson.of(answers)));
    } else {
      WhatIfText.lines(answers).forEach(streams::line);
    }
    return ExitCode.DONE;
  }
}
