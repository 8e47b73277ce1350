package entracte;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The budget of a file, and that the contributors' page tells the house table as the test has it.
 */
class PageTest {
  private static final int LONGEST_FILE = 350;
  private static final int WIDEST_LINE = 100;
  private static final int FEWEST_FILES = 60;

  /** A row of the table: the package, its job, what it may use of ours. */
  private static final Pattern TABLE_ROW =
      Pattern.compile("(?m)^\\| `(\\w+)` \\|[^|]*\\|([^|]*)\\|");

  @Test
  void noFileIsLongAndNoLineIsWide() throws IOException {
    List<String> offences = new ArrayList<>();
    List<Path> files = javaFiles();
    for (Path file : files) {
      List<String> lines = Files.readAllLines(file);
      if (lines.size() > LONGEST_FILE) {
        offences.add(file + " has " + lines.size() + " lines");
      }
      for (int line = 0; line < lines.size(); line++) {
        if (lines.get(line).codePointCount(0, lines.get(line).length()) > WIDEST_LINE) {
          offences.add(file + ":" + (line + 1) + " is too wide");
        }
      }
    }
    assertTrue(files.size() >= FEWEST_FILES, "only " + files.size() + " files seen");
    assertEquals(List.of(), offences);
  }

  @Test
  void everyPackageTeachesItsSubject() {
    for (String name : House.rows().keySet()) {
      Path file = Path.of("src/main/java", House.ROOT, name, "package-info.java");
      assertTrue(Files.isRegularFile(file), file + " is missing");
    }
  }

  @Test
  void thePageForContributorsTellsTheSameTable() throws IOException {
    Map<String, Set<String>> told = new TreeMap<>();
    TABLE_ROW
        .matcher(Files.readString(Path.of("DEVELOPERS.md")))
        .results()
        .filter(row -> House.rows().containsKey(row.group(1)))
        .forEach(row -> told.put(row.group(1), packagesIn(row.group(2))));
    Map<String, Set<String>> held = new TreeMap<>();
    House.rows().forEach((name, row) -> held.put(name, new TreeSet<>(row.ours())));
    assertEquals(held, told);
  }

  private static Set<String> packagesIn(String cell) {
    Set<String> names = new TreeSet<>();
    Pattern.compile("`([^`]+)`").matcher(cell).results().forEach(m -> names.add(m.group(1)));
    return cell.strip().equals("all") ? House.rows().get("cli").ours() : names;
  }

  private static List<Path> javaFiles() throws IOException {
    try (Stream<Path> all = Files.walk(Path.of("src"))) {
      return all.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
  }
}
