package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rig as a plan leaves it, kept for the plan of another night. */
class SavedStateTest {
  private static final String SET = "sets/kitchen-table";

  @TempDir Path folder;
  private final Typist typist = new Typist();

  private Path file() {
    return folder.resolve("stands.yaml");
  }

  private int save(String... more) {
    String[] words = new String[more.length + 4];
    System.arraycopy(new String[] {"plan", SET, "--save", file().toString()}, 0, words, 0, 4);
    System.arraycopy(more, 0, words, 4, more.length);
    return typist.type(words);
  }

  @Test
  void whoStartsWhereThePlanStoodHasNothingToSetUp() {
    assertEquals(0, save("--after", "Kettle"));
    assertTrue(
        typist.out().endsWith("Wrote " + file() + ": the rig after Kettle.\n"), typist.out());
    assertEquals(0, typist.type("plan", SET, "--from", file().toString()));
    assertEquals("", typist.err());
    assertTrue(typist.out().contains("Set-up: 0 moves; lower bound 0."), typist.out());
    assertTrue(typist.out().contains("Between songs: 24 moves"), typist.out());
  }

  @Test
  void unlessToldOtherwiseItIsTheRigAfterTheLastSong() throws IOException {
    assertEquals(0, save("-q"));
    assertFalse(typist.out().contains("Wrote"), "quiet is quiet");
    String text = Files.readString(file());
    assertTrue(text.contains("\nstate: after Blue Enamel\ncords:\n"), text);
    assertTrue(text.contains("\n  osc 2.octave: 4\n"), text);
    assertEquals(0, typist.type("plan", SET, "--mid-set", "--from", file().toString()));
    assertTrue(typist.out().contains("To 1 Kettle: "), typist.out());
  }

  @Test
  void aSongIsNamedOrNumbered() throws IOException {
    assertEquals(0, save("--after", "2"));
    assertTrue(Files.readString(file()).contains("state: after Bread Clock\n"));
    Files.delete(file());
    assertEquals(2, save("--after", "Ketle"));
    assertEquals(
        """
        entracte: the set has no song Ketle
          Did you mean "Kettle"? Its number will do, 1 to 3.
        """,
        typist.err());
    assertEquals(2, save("--after", "4"));
    assertTrue(typist.err().startsWith("entracte: the set has no song 4\n"), typist.err());
    assertFalse(Files.exists(file()));
  }

  @Test
  void nothingIsWrittenOver() throws IOException {
    Files.writeString(file(), "");
    assertEquals(3, save());
    assertEquals("", typist.out());
    assertEquals(
        "entracte: " + file() + " is there already, so I leave it alone\n  Give another name.\n",
        typist.err());
    assertEquals("", Files.readString(file()));
  }

  @Test
  void afterAloneSavesNothing() {
    assertEquals(2, typist.type("plan", SET, "--after", "Kettle"));
    assertEquals(
        "entracte: --after says after which song --save writes, and there is no --save\n"
            + "  Add --save FILE.\n",
        typist.err());
  }

  @Test
  void whoWatchesSavesNothing() {
    assertEquals(2, save("--watch"));
    assertEquals(
        "entracte: --save writes one plan, and --watch plans again and again\n"
            + "  Leave one of them out.\n",
        typist.err());
    assertFalse(Files.exists(file()));
  }
}
