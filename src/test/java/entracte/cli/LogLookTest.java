package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.finding.Finding;
import entracte.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogLookTest {
  @TempDir Path folder;

  private List<String> told() {
    return LogLook.beside(folder).stream().map(LogLookTest::text).toList();
  }

  private static String text(Finding finding) {
    assertEquals(Severity.WARNING, finding.severity());
    return finding.place().line() + ": " + finding.message() + ". " + finding.advice();
  }

  @Test
  void withoutALogNothingIsTold() {
    assertEquals(List.of(), told());
  }

  @Test
  void linesThatCannotBeReadAreToldWithTheirNumbers() throws IOException {
    Files.writeString(
        folder.resolve("rehearsal.log"), "# times\nwhat is this\n\n2026-03-01T19:02:11Z\treh");
    assertEquals(
        List.of(
            "2: this line of the rehearsal log cannot be read and is left out. All other times"
                + " count. Mend the line, or delete it.",
            "4: the last line of the rehearsal log was cut off and is left out. All other times"
                + " count. The line may stay or be deleted."),
        told());
  }

  @Test
  void aFolderInItsPlaceIsTold() throws IOException {
    Path log = Files.createDirectory(folder.resolve("rehearsal.log"));
    assertEquals(
        List.of("1: the rehearsal log cannot be used: " + log + " is a folder. Move it aside."),
        told());
  }

  @Test
  void checkTellsItAndCallsTheSetPlayable() throws IOException {
    Path kitchen = Path.of("sets/kitchen-table");
    for (String name : List.of("set.yaml", "table-case.yaml")) {
      Files.copy(kitchen.resolve(name), folder.resolve(name));
    }
    Files.createDirectory(folder.resolve("patches"));
    for (String name : List.of("open-fifth", "plucked-bass", "struck-bell")) {
      Path patch = Path.of("patches", name + ".yaml");
      Files.copy(kitchen.resolve(patch), folder.resolve(patch));
    }
    Files.writeString(folder.resolve("rehearsal.log"), "what is this\n# end\n");
    Typist typist = new Typist();
    assertEquals(0, typist.type("check", folder.toString()));
    assertEquals(
        "1 warning; the set can be planned.",
        typist.out().lines().reduce((line, next) -> next).orElseThrow());
  }
}
