package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;

/** A real bash reads the script and completes what a musician begins to type. */
@EnabledIf("bashIsThere")
class CompletionCommandTest {
  @TempDir Path folder;

  static boolean bashIsThere() {
    return Files.isExecutable(Path.of("/bin/bash"));
  }

  @BeforeEach
  void writeScript() throws IOException {
    Typist typist = new Typist();
    assertEquals(0, typist.type("completion"));
    Files.writeString(folder.resolve("script"), typist.out());
  }

  @Test
  void aCommandIsCompleted() throws Exception {
    assertEquals(Set.of("plan"), completed("entracte", "pl"));
    assertEquals(Set.of("stage"), completed("entracte", "st"));
  }

  @Test
  void anOptionIsCompleted() throws Exception {
    assertEquals(Set.of("--seconds", "--seed"), completed("entracte", "plan", "--se"));
    assertTrue(completed("entracte", "stage", "--d").contains("--dry-run"));
  }

  @Test
  void whatNobodyKnowsIsNotCompleted() throws Exception {
    assertFalse(completed("entracte", "plan", "--zz").stream().anyMatch(w -> w.startsWith("--")));
  }

  /** What bash offers for the last of the words. */
  private Set<String> completed(String... words) throws IOException, InterruptedException {
    String script =
        "source "
            + folder.resolve("script")
            + " >/dev/null 2>&1\n"
            + "COMP_WORDS=("
            + String.join(" ", words)
            + ")\nCOMP_CWORD="
            + (words.length - 1)
            + "\n_complete_entracte\nprintf '%s\\n' \"${COMPREPLY[@]}\"\n";
    Process bash = new ProcessBuilder("/bin/bash", "-c", script).directory(folder.toFile()).start();
    String said = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, bash.waitFor());
    Set<String> offered = new TreeSet<>();
    said.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(offered::add);
    return offered;
  }
}
