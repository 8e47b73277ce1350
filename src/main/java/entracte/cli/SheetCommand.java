package entracte.cli;

import entracte.cue.CueSheet;
import entracte.cue.Pace;
import entracte.print.TextSheet;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans a set and writes its cue sheet. */
@Command(
    name = "sheet",
    sortOptions = false,
    description = {
      "Writes the cue sheet of a set as text for the printer: the running order, the set-up, and a"
          + " card for each changeover.",
      "A sheet that was written before and not touched since is written anew. Any other file that"
          + " stands there is left alone."
    },
    footer = {
      "",
      "Example:",
      "  java -jar target/entracte.jar sheet sets/kitchen-table -o kitchen-table.txt"
    })
final class SheetCommand implements Callable<Integer> {
  private final Streams streams;
  private final Planning planning;

  @Mixin private SetArgument set;
  @Mixin private SearchOptions search;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE.txt",
      required = true,
      description = "The file to write.")
  private Path file;

  SheetCommand(Streams streams, Planning planning) {
    this.streams = streams;
    this.planning = planning;
  }

  @Override
  public Integer call() {
    demandText(file);
    SheetFile.demandFree(file);
    CueSheet sheet =
        CueSheet.of(new Search(streams, planning).plan(set, search).plan(), Pace.estimated());
    SheetFile.write(file, TextSheet.lines(sheet));
    if (!set.quiet()) {
      streams.line("Wrote " + file + ".");
    }
    return ExitCode.DONE;
  }

  private static void demandText(Path file) {
    String name = file.toString().toLowerCase(Locale.ROOT);
    if (name.endsWith(".pdf")) {
      throw Stop.wrongUsage(
          "this version cannot write PDF yet", "Give the file a name that ends in .txt.");
    }
    if (!name.endsWith(".txt")) {
      throw Stop.wrongUsage(
          "a sheet is a .txt file, not " + file, "Give the file a name that ends in .txt.");
    }
  }
}
