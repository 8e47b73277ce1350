package entracte.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The whole program in a terminal of tmux, as its own process. */
final class Tmux implements AutoCloseable {
  private static final long PATIENCE_SECONDS = 120;
  private static final String SESSION = "stage";

  private final Path folder;
  private final Path socket;

  /**
   * @param folder where the shell leaves what it knows: {@code pid}, and {@code before} and {@code
   *     after}, the settings of the terminal
   */
  Tmux(Path folder) {
    this.folder = folder;
    this.socket = folder.resolve("tmux-" + System.nanoTime()); // a server takes a while to end
  }

  static boolean isHere() {
    try {
      return new ProcessBuilder("tmux", "-V")
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException | InterruptedException none) {
      return false;
    }
  }

  /** Starts the stage; {@code first} is what the shell does before, such as setting a limit. */
  Tmux start(int columns, int rows, String first, Path set) throws Exception {
    Files.deleteIfExists(folder.resolve("pid"));
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String script =
        """
        stty -g > before
        %s
        sh -c 'echo $$ > pid; exec %s -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData \
        -cp "%s" entracte.cli.Main stage "%s"'
        echo "the stage ended with $?"
        stty -g > after
        sleep 600
        """
            .formatted(first, java, System.getProperty("java.class.path"), set.toAbsolutePath());
    Files.writeString(folder.resolve("start.sh"), script);
    run(
        "new-session",
        "-d",
        "-s",
        SESSION,
        "-x",
        "" + columns,
        "-y",
        "" + rows,
        "-c",
        folder.toString(),
        "bash start.sh");
    return this;
  }

  void keys(String... names) throws Exception {
    List<String> words = new ArrayList<>(List.of("send-keys", "-t", SESSION));
    words.addAll(List.of(names));
    run(words.toArray(String[]::new));
  }

  void resize(int columns, int rows) throws Exception {
    run("resize-window", "-t", SESSION, "-x", "" + columns, "-y", "" + rows);
  }

  List<String> screen() throws Exception {
    return run("capture-pane", "-p", "-t", SESSION).lines().toList();
  }

  /** What tmux says of the terminal, such as {@code alternate_on}. */
  String says(String format) throws Exception {
    return run("display-message", "-p", "-t", SESSION, "#{" + format + "}").strip();
  }

  /** Looks until a row fits; the screen as it is then. */
  List<String> await(Predicate<String> row) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    List<String> screen = screen();
    while (screen.stream().noneMatch(row)) {
      if (System.nanoTime() > end) {
        throw new AssertionError("it never came; the screen is\n" + String.join("\n", screen));
      }
      Thread.sleep(10);
      screen = screen();
    }
    return screen;
  }

  /** The process of the program, once it runs. */
  long pid() throws Exception {
    Path file = folder.resolve("pid");
    while (!Files.exists(file) || Files.size(file) == 0) {
      Thread.sleep(2);
    }
    return Long.parseLong(Files.readString(file).strip());
  }

  void kill(String signal) throws Exception {
    new ProcessBuilder("kill", signal, "" + pid()).start().waitFor();
  }

  /** Ends this terminal and whatever runs in it. */
  void end() throws Exception {
    run("kill-session", "-t", SESSION);
  }

  private String run(String... words) throws Exception {
    List<String> command =
        new ArrayList<>(List.of("tmux", "-S", socket.toString(), "-f", "/dev/null"));
    command.addAll(List.of(words));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return said;
  }

  /** Waits for the shell as well, which writes into the folder up to its end. */
  @Override
  public void close() throws Exception {
    List<ProcessHandle> left = processes();
    run("kill-server");
    for (ProcessHandle each : left) {
      each.onExit().get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    }
  }

  /** The shell and what it has started; nothing where the terminal is gone already. */
  private List<ProcessHandle> processes() throws Exception {
    String shell = says("pane_pid");
    return shell.matches("\\d+")
        ? ProcessHandle.of(Long.parseLong(shell)).stream()
            .flatMap(handle -> Stream.concat(Stream.of(handle), handle.descendants()))
            .toList()
        : List.of();
  }
}
