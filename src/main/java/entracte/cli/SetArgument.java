package entracte.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command about a set is told. */
final class SetArgument {
  @Parameters(
      index = "0",
      paramLabel = "SET",
      description = "The set's folder (which holds set.yaml) or its file.")
  private Path path;

  @Option(
      names = {"-q", "--quiet"},
      description = "Say only what matters most.")
  private boolean quiet;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Say this.")
  private boolean help;

  Path path() {
    return path;
  }

  boolean quiet() {
    return quiet;
  }
}
