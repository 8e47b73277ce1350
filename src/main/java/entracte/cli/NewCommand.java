package entracte.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a set to start from. */
@Command(
    name = "new",
    sortOptions = false,
    description = {
      "Writes a small set with its rig and its patches into a new folder. Notes in the files say"
          + " what each line is for; change them one by one into your own. Nothing that is there"
          + " already is written over.",
      "Its folder schemas is for your editor: with it an editor that knows JSON Schema completes"
          + " names and marks mistakes while you type."
    },
    footer = {
      "",
      "Examples:",
      "  java -jar target/entracte.jar new first-night",
      "  java -jar target/entracte.jar plan first-night"
    })
final class NewCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(
      index = "0",
      paramLabel = "FOLDER",
      description = "The folder to write into; it is empty or not there yet.")
  private Path folder;

  @Option(
      names = {"-q", "--quiet"},
      description = "Say only what matters most.")
  private boolean quiet;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Say this.")
  private boolean help;

  NewCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    if (folder.toString().isEmpty()) {
      throw Stop.wrongUsage("the name of the folder is empty", "Name a folder to write into.");
    }
    FirstSet.write(folder);
    if (!quiet) {
      streams.line("A set of three songs to start from is in " + folder + ":");
      streams.line("  set.yaml   the songs and their order; read it first");
      streams.line("  rig.yaml   the modules you own");
      streams.line("  patches    what each song needs");
      streams.line("  schemas    for your editor");
      streams.line("Change one thing at a time, and look after each at what is said by");
      streams.line("  check " + typed(folder));
      streams.line("  plan " + typed(folder));
    }
    return ExitCode.DONE;
  }

  /** As it is to be typed: a name that holds blanks is put in quotation marks. */
  private static String typed(Path folder) {
    return folder.toString().contains(" ") ? '"' + folder.toString() + '"' : folder.toString();
  }
}
