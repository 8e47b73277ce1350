package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README says to type works as typed, and its screen is one the program shows. */
class ReadmeTest {
  private static final Pattern COMMAND =
      Pattern.compile("(?m)^    .*java -jar target/entracte\\.jar (.*)$");
  private static final Pattern SCREEN = Pattern.compile("(?ms)^```$\n(.*?)^```$");

  /** Stands in the screen for lines that were left out. */
  private static final Pattern LEFT_OUT = Pattern.compile("(?m)^\\.{3}$");

  @TempDir Path folder;
  private final String readme = read();
  private final Typist typist = new Typist();

  @Test
  void twoCommandsSetUpTheProgram() {
    List<String> commands = readme.lines().filter(line -> line.startsWith("    mvn ")).toList();
    assertEquals(
        List.of(
            "    mvn -q -DskipTests package"
                + " && java -jar target/entracte.jar plan sets/kitchen-table",
            "    mvn -q verify"),
        commands);
  }

  @Test
  void everyCommandWorksAsTyped() {
    List<String> commands = COMMAND.matcher(readme).results().map(m -> m.group(1)).toList();
    assertFalse(commands.isEmpty());
    for (String command : commands) {
      String[] words =
          command
              .replace("barn.pdf", folder.resolve("barn.pdf").toString())
              .replace("first-night", folder.resolve("first-night").toString())
              .split(" ");
      assertEquals(0, typist.type(words), command + "\n" + typist.err());
    }
  }

  /** A screen that is no longer true is copied anew from a run. */
  @Test
  void theScreenIsWhatTheFirstCommandPrints() {
    typist.type("plan", "sets/kitchen-table");
    int seen = 0;
    for (String piece : LEFT_OUT.split(screen())) {
      int at = typist.out().indexOf(piece.strip(), seen);
      assertTrue(at >= seen, "this is not, or not there, in what is printed:\n" + piece);
      seen = at + piece.strip().length();
    }
  }

  private String screen() {
    MatchResult found = SCREEN.matcher(readme).results().findFirst().orElseThrow();
    return found.group(1);
  }

  private static String read() {
    try {
      return Files.readString(Path.of("README.md"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
