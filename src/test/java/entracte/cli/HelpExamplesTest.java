package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every example in every command's help works as typed: each is typed here, with the sets copied to
 * a folder of the test's own, and its files written there.
 */
class HelpExamplesTest {
  private static final String PROGRAM = "java -jar target/entracte.jar ";

  /** Before the first moment that the typist's clock knows. */
  private static final Instant WRITTEN = Instant.parse("2026-01-01T00:00:00Z");

  @TempDir Path folder;
  private final Typist typist = new Typist();

  static Stream<String> commands() {
    Streams nowhere = new Streams(new ByteArrayOutputStream(), System.err, false, false);
    return new Program(nowhere, null, null).commandLine().getSubcommands().keySet().stream();
  }

  @BeforeEach
  void copySets() throws IOException {
    try (Stream<Path> all = Files.walk(Path.of("sets"))) {
      for (Path each : (Iterable<Path>) all::iterator) {
        Path copy = Files.copy(each, folder.resolve(each));
        Files.setLastModifiedTime(copy, FileTime.from(WRITTEN));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("commands")
  void theExamplesOfACommandWork(String command) {
    List<String> examples = examples(command);
    assertFalse(examples.isEmpty(), command + " shows no example");
    assertTrue(examples.get(0).startsWith(command), examples.get(0));
    for (String example : examples) {
      int code = typist.hearing("\n".repeat(200)).type(words(example));
      if (needsTerminal(example)) {
        assertEquals(ExitCode.WRONG_USAGE, code, example);
        assertTrue(typist.err().startsWith("entracte: the stage needs a terminal"), typist.err());
      } else if (example.startsWith("ports --listen") && code == ExitCode.TROUBLE) {
        assertTrue(typist.err().startsWith("entracte: there is no MIDI port"), typist.err());
      } else {
        assertEquals(ExitCode.DONE, code, example + "\n" + typist.err());
        assertFalse(typist.out().isBlank(), example);
      }
    }
  }

  /** The show alone is played on a terminal, which no test of this kind has. */
  private static boolean needsTerminal(String example) {
    return example.startsWith("stage ") && !example.contains("--dry-run");
  }

  @Test
  void theExampleOfTheProgramWorks() {
    assertEquals(0, typist.type("--help"));
    assertEquals(List.of("new first-night", "plan --help"), listed(typist.out()));
    assertEquals(0, typist.type("plan", "--help"));
  }

  private List<String> examples(String command) {
    assertEquals(0, typist.type(command, "--help"));
    return listed(typist.out());
  }

  private static List<String> listed(String help) {
    return help.replaceAll(" \\\\\n +", " ")
        .lines()
        .map(String::strip)
        .filter(line -> line.startsWith(PROGRAM))
        .map(line -> line.substring(PROGRAM.length()))
        .toList();
  }

  /** Names of files and folders lead into the test's folder; the rest is as typed. */
  private String[] words(String example) {
    List<String> words = new ArrayList<>();
    for (String word : Arrays.asList(example.split(" "))) {
      boolean name = word.matches("sets/.*|first-night|[\\w-]+\\.(pdf|txt|svg|yaml)");
      words.add(name ? folder.resolve(word).toString() : word);
    }
    return words.toArray(String[]::new);
  }
}
