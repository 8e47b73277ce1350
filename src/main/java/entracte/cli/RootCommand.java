package entracte.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What is typed before any command. */
@Command(
    name = "entracte",
    version = RootCommand.VERSION_LINE,
    sortOptions = false,
    synopsisSubcommandLabel = "COMMAND",
    description = {
      "Plans the changeovers of a set played on a patch-cable synthesizer: which module plays what"
          + " in which song, so that the fewest plugs, knobs and switches move between songs."
    },
    commandListHeading = "%nCommands:%n",
    footer = {
      "",
      "A set is a folder that holds set.yaml, or the file itself. To begin with one of your own:",
      "  java -jar target/entracte.jar new first-night",
      "Every command explains itself:",
      "  java -jar target/entracte.jar plan --help"
    })
final class RootCommand implements Callable<Integer> {
  static final String VERSION = "0.1.0";
  static final String VERSION_LINE = "entracte " + VERSION;

  private final Streams streams;

  @Spec private CommandSpec spec;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Say this.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Say which version this is.")
  private boolean version;

  RootCommand(Streams streams) {
    this.streams = streams;
  }

  /** Reached only when no command was typed. */
  @Override
  public Integer call() {
    streams.complain(spec.commandLine().getUsageMessage().stripTrailing());
    return ExitCode.WRONG_USAGE;
  }
}
