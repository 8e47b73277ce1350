package entracte.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints what makes a shell complete our commands and options. */
@Command(
    name = "completion",
    sortOptions = false,
    description = {
      "Prints a script for bash and zsh, with which the tab key completes the commands, options,"
          + " their words, folders and files.",
      "For the window that you are in, in the folder of the program:",
      "  source <(java -jar target/entracte.jar completion)",
      "From then on its name is entracte in every folder: entracte plan sets/kitchen-table.",
      "In ~/.bashrc or ~/.zshrc, with the whole way to the jar, the line holds for every new"
          + " window."
    },
    footer = {
      "",
      "Examples:",
      "  java -jar target/entracte.jar completion",
      "  java -jar target/entracte.jar completion zsh"
    })
final class CompletionCommand implements Callable<Integer> {
  private static final String JAR = ".jar";

  private final Streams streams;

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "SHELL",
      converter = ShellWord.class,
      completionCandidates = ShellWord.class,
      description = "bash or zsh; the script is the same.")
  private String shell;

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
    String app = System.getProperty("jpackage.app-path", "");
    streams.text(named(app, System.getProperty("java.class.path", "")));
    streams.text(AutoComplete.bash("entracte", spec.root().commandLine()));
    return ExitCode.DONE;
  }

  /**
   * Gives what was started the name that the script completes; a program of that name that is there
   * already keeps it.
   *
   * @param app the program that needs no Java; empty if it is another
   * @param classes what Java was told to run
   */
  static String named(String app, String classes) {
    if (app.isEmpty() && !classes.endsWith(JAR)) {
      return "";
    }
    String run = app.isEmpty() ? "java -jar " + quoted(classes) : quoted(app);
    return "type entracte >/dev/null 2>&1 || entracte() { " + run + " \"$@\"; }\n";
  }

  private static String quoted(String file) {
    return "'" + Path.of(file).toAbsolutePath().toString().replace("'", "'\\''") + "'";
  }

  /** The shells that know what to do with it. */
  static final class ShellWord extends OneOf<String> {
    ShellWord() {
      super(List.of("bash", "zsh"), word -> word);
    }

    @Override
    String refusal(String typed, List<String> words) {
      String near = OneOf.near(typed.toLowerCase(Locale.ROOT), words);
      return "the script is for bash and zsh, not for " + typed + near;
    }
  }
}
