package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whole nights. Each folder of {@code src/test/resources/scenarios} holds a script, {@code
 * night.txt}, whose first line names the set, and what must come of it, {@code expected.txt}. With
 * {@code -Dscenarios.write=true} the expectations are written anew, to be read before they are
 * believed.
 */
final class ScenarioTest {
  private static final Path FOLDERS = Path.of("src/test/resources/scenarios");

  @TempDir Path scratch;

  @TestFactory
  Stream<DynamicTest> everyNightGoesAsItIsWrittenDown() throws IOException {
    List<Path> nights;
    try (Stream<Path> folders = Files.list(FOLDERS)) {
      nights = folders.filter(f -> Files.exists(f.resolve("night.txt"))).sorted().toList();
    }
    assertTrue(nights.size() >= 4, "scenarios are missing");
    return nights.stream()
        .map(
            folder -> DynamicTest.dynamicTest(folder.getFileName().toString(), () -> play(folder)));
  }

  private void play(Path folder) throws Exception {
    List<String> script = Files.readAllLines(folder.resolve("night.txt"));
    Path set = scratch.resolve(folder.getFileName().toString());
    copy(FOLDERS.resolve(script.get(0).replaceFirst("^set ", "")), set);
    try (Scenario scenario = new Scenario(set)) {
      String played = String.join("\n", scenario.play(script.subList(1, script.size()))) + "\n";
      Path expected = folder.resolve("expected.txt");
      if (Boolean.getBoolean("scenarios.write")) {
        Files.writeString(expected, played);
      }
      assertEquals(Files.readString(expected), played);
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      all.forEach(
          file -> {
            try {
              Files.copy(file, to.resolve(from.relativize(file).toString()));
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    }
  }
}
