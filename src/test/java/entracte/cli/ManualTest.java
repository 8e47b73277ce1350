package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.read.SetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages under {@code src/docs} say what the program says and does. */
class ManualTest {
  private static final Path DOCS = Path.of("src", "docs");

  /** A file of the page on files: its name stands in the line above. */
  private static final Pattern EXAMPLE = Pattern.compile("(?s)`([\\w./-]+)`:\n\n```yaml\n(.*?)```");

  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]+)[^):]*\\)");

  @TempDir Path folder;

  @Test
  void thePagesMadeFromTheProgramAreAsItWouldMakeThemNow() throws IOException {
    for (Map.Entry<Path, String> page : ManualMaker.pages().entrySet()) {
      assertEquals(
          page.getValue(),
          Files.exists(page.getKey()) ? Files.readString(page.getKey()) : "",
          page.getKey() + " is old: run entracte.cli.ManualMaker");
    }
  }

  @Test
  void noPageTellsOfACommandThatIsGone() throws IOException {
    try (Stream<Path> pages = Files.list(DOCS.resolve("commands"))) {
      List<Path> made = List.copyOf(ManualMaker.pages().keySet());
      assertEquals(List.of(), pages.filter(page -> !made.contains(page)).toList());
    }
  }

  @Test
  void everyKeyOfEverySchemaHasItsTable() throws IOException {
    List<String> named = KeyTables.named(Files.readString(DOCS.resolve("files.md")));
    assertTrue(named.size() >= 10, named::toString);
    assertEquals(List.of(), KeyTables.difference(KeyTables.all(), named));
    assertEquals(List.of(), KeyTables.difference(named, KeyTables.all()));
  }

  @Test
  void theFilesOfThePageAreASetWithoutMistakes() throws IOException {
    List<String> names = new ArrayList<>();
    Matcher example = EXAMPLE.matcher(Files.readString(DOCS.resolve("files.md")));
    while (example.find()) {
      Path file = folder.resolve(example.group(1));
      Files.createDirectories(file.getParent());
      Files.writeString(file, example.group(2));
      names.add(example.group(1));
    }
    assertTrue(names.contains("set.yaml") && names.size() >= 3, names::toString);
    assertEquals(List.of(), SetReader.read(folder).findings());
    Typist typist = new Typist();
    assertEquals(0, typist.type("check", folder.toString()), typist.out());
    assertEquals("No mistakes found; the set can be planned.\n", typist.out());
  }

  @Test
  void everyLinkLeadsToAFile() throws IOException {
    List<String> broken = new ArrayList<>();
    List<Path> pages = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
    try (Stream<Path> docs = Files.walk(DOCS)) {
      docs.filter(page -> page.toString().endsWith(".md")).forEach(pages::add);
    }
    for (Path page : pages) {
      Matcher link = LINK.matcher(Files.readString(page));
      while (link.find()) {
        if (!Files.exists(page.toAbsolutePath().getParent().resolve(link.group(1)))) {
          broken.add(page + ": " + link.group(1));
        }
      }
    }
    assertEquals(List.of(), broken);
  }
}
