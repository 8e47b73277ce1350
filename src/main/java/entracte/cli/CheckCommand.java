package entracte.cli;

import entracte.finding.FindingPrinter;
import entracte.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells every mistake at once. */
@Command(
    name = "check",
    sortOptions = false,
    description =
        "Tells every mistake in a set at once: where it stands, what is wrong, what helps.",
    footer = {
      "",
      "Ends with 1 if there are errors, 0 if not. Example:",
      "  java -jar target/entracte.jar check sets/kitchen-table"
    })
final class CheckCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private SetArgument set;

  @Option(names = "--json", description = "Print the findings as JSON, for other programs.")
  private boolean json;

  CheckCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    Loader.Loaded loaded = Loader.load(set.path());
    if (json) {
      streams.text(Json.write(FindingsJson.of(loaded)));
    } else {
      streams.text(FindingPrinter.print(loaded.findings()));
      if (!set.quiet()) {
        streams.line(summary(loaded));
      }
    }
    return loaded.set().isPresent() ? ExitCode.DONE : ExitCode.FINDINGS;
  }

  private static String summary(Loader.Loaded loaded) {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long count = loaded.count(severity);
      if (count > 0) {
        counts.add(count + " " + severity.word() + (count == 1 ? "" : "s"));
      }
    }
    String found = counts.isEmpty() ? "No mistakes found" : String.join(", ", counts);
    return found + (loaded.set().isPresent() ? "; the set can be planned." : ".");
  }
}
