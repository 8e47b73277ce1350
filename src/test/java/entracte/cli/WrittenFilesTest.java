package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Where commands write: beside the set, into the file that was named, and nowhere else, whatever
 * the names in the files would like.
 */
class WrittenFilesTest {
  /** Begins, ends all steps at once, says that this was the whole changeover, and goes on. */
  private static final String HASTY_HANDS = "\n".repeat(3) + "y\n" + "\n".repeat(200);

  @TempDir Path folder;
  private final Typist typist = new Typist();
  private Path night;

  @BeforeEach
  void writeASetWithWickedNames() throws IOException {
    night = folder.resolve("night");
    FirstSet.write(night);
    change("set.yaml", "set: First Night", "set: ../wicked");
    change("set.yaml", "song: Opening", "song: ../../wicked");
    change("rig.yaml", "rig: First case", "rig: /tmp/wicked");
    change("patches/low-voice.yaml", "patch: low voice", "patch: '..\\wicked'");
    Files.writeString(folder.resolve("neighbour.txt"), "mine");
  }

  private void change(String name, String old, String now) throws IOException {
    String text = Files.readString(night.resolve(name));
    assertTrue(text.contains(old), text);
    Files.writeString(night.resolve(name), text.replace(old, now));
  }

  private Map<String, String> files() throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : (Iterable<Path>) all.filter(Files::isRegularFile)::iterator) {
        files.put(
            folder.relativize(each).toString(), HexFormat.of().formatHex(Files.readAllBytes(each)));
      }
    }
    return files;
  }

  private void type(String command, String... more) {
    String[] words = new String[2 + more.length];
    words[0] = command;
    words[1] = night.toString();
    System.arraycopy(more, 0, words, 2, more.length);
    typist.hearing(HASTY_HANDS).type(words);
    assertFalse(typist.err().contains("the program failed"), typist.err());
  }

  @Test
  void whatOnlyTellsWritesNothing() throws IOException {
    Map<String, String> before = files();
    type("check");
    type("check", "--stage");
    type("plan", "--why");
    type("plan", "--json");
    type("order", "--seconds", "0.2");
    type("whatif", "--seconds", "0.2");
    type("stage", "--dry-run");
    type("new");
    assertEquals(before, files());
  }

  @Test
  void whatWritesAddsFilesOfItsOwnBesideTheSet() throws IOException {
    Map<String, String> before = files();
    type("rehearse", "--to", "2", "--whole");
    type("sheet", "-o", night.resolve("sheet.pdf").toString());
    type("sheet", "-o", night.resolve("sheet.txt").toString());
    type("sheet", "-o", night.resolve("maps.svg").toString());
    Map<String, String> after = files();
    before.forEach((name, bytes) -> assertEquals(bytes, after.get(name), name));
    after.keySet().removeAll(before.keySet());
    assertTrue(after.containsKey("night/rehearsal.log"), after.keySet()::toString);
    assertTrue(after.containsKey("night/sheet.pdf"), after.keySet()::toString);
    assertTrue(
        after.keySet().stream()
            .allMatch(
                name -> name.matches("night/(rehearsal\\.log|sheet\\.(pdf|txt)|maps.*\\.svg)")),
        after.keySet()::toString);
  }

  /** A set from a stranger may hold links; nothing grows at their other end. */
  @Test
  void nothingIsWrittenThroughALink() throws IOException {
    Path victim = folder.resolve("neighbour.txt");
    Files.createSymbolicLink(night.resolve("rehearsal.log"), victim);
    Files.createSymbolicLink(night.resolve("sheet.pdf"), victim);
    Files.createSymbolicLink(night.resolve("stage.journal"), victim);
    type("rehearse", "--to", "2", "--whole");
    String said = typist.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("rehearsal.log is a link. The odds hold until you end."), said);
    type("sheet", "-o", night.resolve("sheet.pdf").toString());
    assertTrue(typist.err().contains("I leave it alone"), typist.err());
    type("check", "--stage");
    assertEquals("mine", Files.readString(victim));
    Files.delete(night.resolve("stage.journal"));
    Files.createSymbolicLink(night.resolve("stage.journal"), folder.resolve("nowhere"));
    type("check", "--stage");
    assertTrue(typist.out().replaceAll("\\s+", " ").contains("stage.journal is no ordinary file."));
  }

  /** With a loader that makes objects, the first would make a file, the second reach out. */
  @Test
  void aTagMakesNothing() throws IOException {
    Path victim = folder.resolve("victim");
    Files.writeString(
        night.resolve("set.yaml"),
        """
        set: !!java.io.FileOutputStream [%s]
        rig: !!javax.script.ScriptEngineManager [!!java.net.URLClassLoader [[]]]
        """
            .formatted(victim));
    assertEquals(1, typist.type("check", night.toString()));
    assertTrue(typist.out().contains("a ! means nothing here"), typist.out());
    assertFalse(Files.exists(victim));
  }
}
