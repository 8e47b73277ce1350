package entracte.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints what makes a shell complete our commands and options. */
@Command(
    name = "completion",
    sortOptions = false,
    description = {
      "Prints a script for bash and zsh, with which the tab key completes the commands and options"
          + " of a program called entracte.",
      "Where you start the jar with java, give it that name first:",
      "  entracte() { java -jar /FOLDER/entracte.jar \"$@\"; }",
      "  source <(entracte completion)",
      "In zsh put this line before them: autoload -U compinit bashcompinit; compinit; bashcompinit"
    },
    footer = {"", "Example:", "  java -jar target/entracte.jar completion"})
final class CompletionCommand implements Callable<Integer> {
  private final Streams streams;

  @Spec private CommandSpec spec;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Say this.")
  private boolean help;

  CompletionCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    String script = AutoComplete.bash("entracte", spec.root().commandLine());
    streams.text(script);
    return ExitCode.DONE;
  }
}
