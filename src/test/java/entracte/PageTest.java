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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The budget of a file, and that the contributors' page tells the house table as the test has it.
 */
class PageTest {
  private static final int LONGEST_FILE = 350;
  private static final int WIDEST_LINE = 100;
  private static final int LONGEST_BODY = 40;
  private static final int FEWEST_FILES = 300;
  private static final int FEWEST_METHODS = 2000;

  /** The formatter closes a method on a line of its own, as far in as the method begins. */
  private static final Pattern CLOSING = Pattern.compile("( {2,})}");

  /** What closes likewise and is no method. */
  private static final Pattern NO_METHOD =
      Pattern.compile(
          "\\b(class|record|interface|enum|if|for|while|do|switch|try|catch|else|finally"
              + "|synchronized)\\b|->|^\\s*[.}]");

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
  void noMethodIsLong() throws IOException {
    List<String> offences = new ArrayList<>();
    int methods = 0;
    for (Path file : javaFiles()) {
      List<String> lines = Files.readAllLines(file);
      for (int end = 0; end < lines.size(); end++) {
        int start = startOfMethod(lines, end);
        methods += start < 0 ? 0 : 1;
        if (start >= 0 && end - start - 1 > LONGEST_BODY) {
          offences.add(file + ":" + (start + 1) + " has a method of " + (end - start - 1));
        }
      }
    }
    assertTrue(methods >= FEWEST_METHODS, "only " + methods + " methods seen");
    assertEquals(List.of(), offences);
  }

  /** The first line of the method that ends in line {@code end}; -1 if none ends there. */
  private static int startOfMethod(List<String> lines, int end) {
    Matcher closing = CLOSING.matcher(lines.get(end));
    if (!closing.matches()) {
      return -1;
    }
    int start = end - 1;
    while (start >= 0
        && (lines.get(start).isBlank() || lines.get(start).startsWith(closing.group(1) + " "))) {
      start--;
    }
    boolean isMethod =
        start >= 0 && lines.get(start).contains("(") && !NO_METHOD.matcher(lines.get(start)).find();
    return isMethod ? start : -1;
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
