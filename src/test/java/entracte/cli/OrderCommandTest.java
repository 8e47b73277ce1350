package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drive is at 2, 8, 2, 8: with like beside like one turn is enough. */
class OrderCommandTest {
  @TempDir Path folder;
  private final Typist typist = new Typist();

  @BeforeEach
  void writeTheSet() throws IOException {
    Files.writeString(
        folder.resolve("rig.yaml"),
        """
        rig: Shoe box
        kinds:
          tone: {out: [wave]}
          box: {in: [audio], out: [out], knobs: {drive: 0..10}, leaves: [out]}
        rows:
          - - tone 1: tone
            - box 1: box
        cords: 4
        """);
    Files.writeString(
        folder.resolve("hum.yaml"),
        """
        patch: hum
        connections: {tone 1.wave: box 1.audio}
        settings: {box 1: {drive: 2}}
        """);
    set("");
  }

  private void set(String rules) throws IOException {
    Files.writeString(
        folder.resolve("set.yaml"),
        """
        set: Shoe Songs
        rig: rig.yaml
        RULES
        songs:
          - song: Heel
            patch: hum.yaml
          # the second one
          - {song: Toe, patch: hum.yaml, settings: {box 1: {drive: 8}}}
          - {song: Lace, patch: hum.yaml, gap: 20 s}
          - {song: Sole, patch: hum.yaml, settings: {box 1: {drive: 8}}}
        """
            .replace("RULES", rules));
  }

  @Test
  void itTellsWhatIsSavedAndWhatIsProven() {
    assertEquals(0, typist.type("order", folder.toString()));
    assertEquals(
        """
        Shoe Songs, 4 songs on Shoe box

        Proposed order
             song           was  moves  takes       gap
          1  Heel             1      3  14 s        set-up, nobody waits
          2  Lace             3      0  0 s         20 s
          3  Toe              2      1  4 s
          4  Sole             4      0  0 s
             between songs           1  4 s

        As written: 3 moves between songs. Proposed: 1 move, 2 fewer.
        Lower bound of every order permitted: 1. Proven: no order has fewer moves.
        Your set is as it was; --write FILE puts it in this order into a new file.
        """,
        typist.out());
    assertEquals("", typist.err());
  }

  @Test
  void rulesAreKept() throws IOException {
    set("together: [Heel, Toe]");
    assertEquals(0, typist.type("order", "--json", folder.toString()));
    Map<?, ?> json = (Map<?, ?>) StrictJson.read(typist.out());
    assertEquals(1.0, json.get("moves"));
    List<?> order = (List<?>) json.get("order");
    List<?> names = order.stream().map(s -> ((Map<?, ?>) s).get("song")).toList();
    assertEquals(1, Math.abs(names.indexOf("Heel") - names.indexOf("Toe")), "" + names);
    assertEquals(true, json.get("proven"));
  }

  @Test
  void rulesThatContradictStopIt() throws IOException {
    set("together: [Heel, Toe]\napart: [Heel, Toe]");
    assertEquals(1, typist.type("order", folder.toString()));
    assertTrue(
        typist
            .err()
            .contains(
                "no order of the songs keeps all of these: \"Heel\" and \"Toe\" stay together;"
                    + " \"Heel\" and \"Toe\" stay apart"),
        typist.err());
  }

  @Test
  void theNewSetIsWrittenBesideAndPlansAsPromised() throws IOException {
    Path file = folder.resolve("quick.yaml");
    String before = Files.readString(folder.resolve("set.yaml"));
    assertEquals(0, typist.type("order", "-q", folder.toString(), "--write", file.toString()));
    assertEquals(before, Files.readString(folder.resolve("set.yaml")));
    assertTrue(
        Files.readString(file).contains("  # the second one\n  - {song: Toe"),
        Files.readString(file));
    assertEquals(0, typist.type("plan", "-q", file.toString()));
    assertTrue(typist.out().contains("Between songs: 1 move; lower bound 1."), typist.out());
  }

  @Test
  void nothingThatIsThereIsWrittenOver() throws IOException {
    Path file = folder.resolve("rig.yaml");
    String before = Files.readString(file);
    assertEquals(3, typist.type("order", folder.toString(), "--write", file.toString()));
    assertEquals(before, Files.readString(file));
    assertEquals("", typist.out());
  }

  @Test
  void theNewSetStandsWhereItsFilesAreFound() throws IOException {
    Path other = Files.createDirectory(folder.resolve("other"));
    Path file = other.resolve("quick.yaml");
    assertEquals(2, typist.type("order", folder.toString(), "--write", file.toString()));
    assertFalse(Files.exists(file));
    assertTrue(typist.err().contains("Write to " + folder.resolve("quick.yaml")), typist.err());
  }
}
