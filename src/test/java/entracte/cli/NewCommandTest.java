package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A new set can be planned at once, explains itself, and costs nobody a file. */
class NewCommandTest {
  @TempDir Path folder;
  private final Typist typist = new Typist();

  @Test
  void aNewSetHasNoMistakeAndIsPlannedAtOnce() {
    Path set = folder.resolve("nights/first");
    assertEquals(0, typist.type("new", set.toString()));
    assertEquals(0, typist.type("check", set.toString()));
    assertEquals("No mistakes found; the set can be planned.\n", typist.out());
    assertEquals(0, typist.type("plan", set.toString()));
    assertTrue(typist.out().contains("Proven: no plan has fewer."), typist.out());
  }

  @Test
  void itSaysWhatIsWhereAndWhatIsNext() {
    assertEquals(0, typist.type("new", folder.resolve("a").toString()));
    assertEquals(
        """
        A set of three songs to start from is in FOLDER:
          set.yaml   the songs and their order; read it first
          rig.yaml   the modules you own
          patches    what each song needs
          schemas    for your editor
        Change one thing at a time, and look after each at what is said by
          check FOLDER
          plan FOLDER
        """,
        typist.out().replace(folder.resolve("a").toString(), "FOLDER"));
  }

  @Test
  void aNameWithBlanksIsShownAsItIsTyped() {
    Path set = folder.resolve("neue Nacht \u00E4");
    assertEquals(0, typist.type("new", set.toString()));
    assertTrue(typist.out().endsWith("  check \"" + set + "\"\n  plan \"" + set + "\"\n"));
    assertEquals(0, typist.type("check", set.toString()));
  }

  @Test
  void everyFileNamesTheSchemaThatStandsBesideIt() throws IOException {
    typist.type("new", folder.toString());
    try (Stream<Path> all = Files.walk(folder)) {
      List<Path> files = all.filter(file -> file.toString().endsWith(".yaml")).toList();
      assertEquals(4, files.size());
      for (Path file : files) {
        String first = Files.readAllLines(file).get(0);
        String prefix = "# yaml-language-server: $schema=";
        assertTrue(first.startsWith(prefix), first);
        Path schema = file.resolveSibling(first.substring(prefix.length()));
        assertTrue(Files.readString(schema).contains("json-schema.org/draft/2020-12/schema"));
      }
    }
  }

  @Test
  void aFolderThatHoldsSomethingIsLeftAlone() throws IOException {
    Files.writeString(folder.resolve("shopping.txt"), "strings");
    assertEquals(3, typist.type("new", folder.toString()));
    assertEquals(
        "entracte: "
            + folder
            + " is there already and holds something, so I leave it alone\n"
            + "  Name a folder that is empty or not there yet.\n",
        typist.err());
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(1, all.count());
    }
  }

  @Test
  void aFileInTheWayIsLeftAlone() throws IOException {
    Path file = Files.writeString(folder.resolve("night"), "mine");
    assertEquals(3, typist.type("new", file.toString()));
    assertEquals(3, typist.type("new", file.resolve("within").toString()));
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void aLinkThatLeadsNowhereIsNotFollowed() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("gone"));
    assertEquals(3, typist.type("new", link.toString()));
    assertFalse(Files.exists(folder.resolve("gone")));
  }

  @Test
  void aFolderWithoutANameIsAskedFor() {
    assertEquals(2, typist.type("new"));
    assertTrue(typist.err().startsWith("entracte: new needs the name of a folder"), typist.err());
    assertEquals(2, typist.type("new", ""));
    assertTrue(typist.err().startsWith("entracte: the name of the folder is empty"), typist.err());
  }
}
