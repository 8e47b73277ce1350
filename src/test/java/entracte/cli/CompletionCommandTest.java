package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;

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
  void aFolderWithASetIsCompletedWhateverItsName() throws Exception {
    Files.createDirectories(folder.resolve("mein \u00DCbungsset"));
    assertEquals(Set.of("mein \u00DCbungsset"), completed("entracte", "plan", "mein"));
  }

  @Test
  void theWordsOfAnOptionAreThoseThatItTakes() throws Exception {
    assertEquals(Set.of("fewest", "fastest"), completed("entracte", "plan", "--aim", "f"));
    assertEquals(Set.of("set-up"), completed("entracte", "sheet", "--pages", "s"));
    assertEquals(Set.of("stand"), completed("entracte", "sheet", "--paper", "s"));
    assertEquals(Set.of("bash", "zsh"), completed("entracte", "completion", ""));
    int taken = 0;
    for (CommandLine command : ManualMaker.program().getSubcommands().values()) {
      for (ArgSpec each : command.getCommandSpec().args()) {
        Iterable<String> words = each.completionCandidates();
        for (String word : words == null ? List.<String>of() : words) {
          each.converters()[0].convert(word);
          taken++;
        }
      }
    }
    assertTrue(taken >= 3 + 7 + 4 + 2, "only " + taken + " words seen");
  }

  @Test
  void aShellMayBeNamedAndAnotherIsToldWhichThereAre() {
    Typist typist = new Typist();
    assertEquals(0, typist.type("completion"));
    String script = typist.out();
    for (String shell : List.of("bash", "zsh", "ZSH")) {
      assertEquals(0, typist.type("completion", shell));
      assertEquals(script, typist.out());
    }
    assertEquals(2, typist.type("completion", "fish"));
    assertEquals(
        "entracte: the script is for bash and zsh, not for fish\n"
            + "  Add --help to see what can be typed.\n",
        typist.err());
  }

  @Test
  void aJarGetsTheNameThatIsCompletedUnlessAProgramHasIt() throws Exception {
    assertEquals("", CompletionCommand.named("", "target/classes:lib/other"));
    String line = CompletionCommand.named("", folder.resolve("it's here.jar").toString());
    String java = "java() { printf '<%s>' \"$@\"; }\n";
    String jar = "<-jar><" + folder.resolve("it's here.jar") + "><plan><a b>";
    assertEquals(jar, said(java + line + "entracte plan 'a b'"));
    assertEquals("mine", said("entracte() { printf mine; }\n" + java + line + "entracte plan"));
    Path app = Files.writeString(folder.resolve("its own"), "#!/bin/bash\nprintf '<%s>' \"$@\"\n");
    assertTrue(app.toFile().setExecutable(true));
    String name = CompletionCommand.named(app.toString(), "some.jar");
    assertEquals("<plan><a b>", said(name + "entracte plan 'a b'"));
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
    Set<String> offered = new TreeSet<>();
    said(script).lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(offered::add);
    return offered;
  }

  private String said(String script) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder("/bin/bash", "-c", script);
    builder.environment().put("LC_ALL", "C.UTF-8");
    Process bash = builder.directory(folder.toFile()).start();
    String said = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, bash.waitFor());
    return said;
  }
}
