package entracte.cli;

import entracte.check.PlayableSet;
import entracte.cue.CueSheet;
import entracte.plan.Aim;
import entracte.plan.Ordered;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Proposes an order of the songs. */
@Command(
    name = "order",
    sortOptions = false,
    description = {
      "Proposes an order of the songs with fewer moves between them, says what it saves, and what"
          + " is known about better ones.",
      "Encores stay behind all others. A song may say first: yes, last: yes, place: 3, before:"
          + " [SONG], after: [SONG]; a set together: [[SONG, SONG]] and apart: [[SONG, SONG]].",
      "Your set stays as it is. --write puts it in the proposed order into a new file."
    },
    footer = {
      "",
      "Examples:",
      "  java -jar target/entracte.jar order sets/kitchen-table",
      "  java -jar target/entracte.jar order sets/orchard-barn --seconds 5"
    })
final class OrderCommand implements Callable<Integer> {
  private final Streams streams;
  private final Planning planning;

  @Mixin private SetArgument set;
  @Mixin private SearchOptions search;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description = "A new file, beside your set's own, for the set in the proposed order.")
  private Path file;

  @Option(names = "--json", description = "Print the order as JSON, for other programs.")
  private boolean json;

  OrderCommand(Streams streams, Planning planning) {
    this.streams = streams;
    this.planning = planning;
  }

  @Override
  public Integer call() {
    if (search.aim() != Aim.FEWEST) {
      throw Stop.wrongUsage("order looks for the fewest moves, and has no other aim", "");
    }
    PlayableSet playable = Loader.playable(set.path(), streams);
    if (file != null) {
      NewSetFile.demandFree(file, set.path());
    }
    Ordered.Found found = new Search(streams, planning).order(playable, search, set.quiet());
    if (json) {
      streams.text(Json.write(OrderJson.of(found, playable)));
    } else {
      CueSheet sheet = Player.words(found.proposed().plan(), set.path());
      OrderText.lines(found, sheet, set.quiet()).forEach(streams::line);
    }
    if (file != null) {
      NewSetFile.write(file, set.path(), found.order());
      say("Wrote " + file + ".");
    } else if (!found.isWritten()) {
      say("Your set is as it was; --write FILE puts it in this order into a new file.");
    }
    return ExitCode.DONE;
  }

  private void say(String text) {
    if (!json && !set.quiet()) {
      streams.line(text);
    }
  }
}
