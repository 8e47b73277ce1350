package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What comes back for what is typed, apart from the work itself. */
class ProgramTest {
  private final Typist typist = new Typist();

  @Test
  void withoutACommandTheHelpIsComplainedAndTheUsageIsWrong() {
    assertEquals(2, typist.type());
    assertEquals("", typist.out());
    assertTrue(typist.err().startsWith("Usage: entracte [-hV] COMMAND"), typist.err());
  }

  @Test
  void theVersionIsALine() {
    assertEquals(0, typist.type("--version"));
    assertEquals("entracte 0.1.0\n", typist.out());
  }

  @Test
  void anUnknownCommandSuggestsTheNearOne() {
    assertEquals(2, typist.type("paln", "sets/any"));
    assertEquals(
        """
        entracte: no command is called paln
          Did you mean plan?
          Add --help to see what can be typed.
        """,
        typist.err());
  }

  @Test
  void anUnknownOptionSuggestsTheNearOne() {
    assertEquals(2, typist.type("plan", "--secnods", "3", "sets/any"));
    assertEquals(
        """
        entracte: no option is called --secnods
          Did you mean --seconds?
          Add --help to see what can be typed.
        """,
        typist.err());
  }

  @Test
  void anOptionThatIsSetOrNotTakesNoValue() {
    assertEquals(2, typist.type("plan", "--why=yes", "sets/any"));
    assertEquals(
        """
        entracte: --why takes no value
          Add --help to see what can be typed.
        """,
        typist.err());
  }

  @Test
  void anUnknownOptionWithItsValueSuggestsTheNearOne() {
    assertEquals(2, typist.type("plan", "--secnods=3", "sets/any"));
    assertEquals(
        """
        entracte: no option is called --secnods
          Did you mean --seconds?
          Add --help to see what can be typed.
        """,
        typist.err());
  }

  @Test
  void aCommandAboutASetAsksForIt() {
    assertEquals(2, typist.type("check"));
    assertEquals(
        """
        entracte: check needs a set: its folder or its file
          Add --help to see what can be typed.
        """,
        typist.err());
  }

  @Test
  void aSheetAsksForItsFile() {
    assertEquals(2, typist.type("sheet", "sets/any"));
    assertEquals(
        """
        entracte: sheet needs -o FILE
          Add --help to see what can be typed.
        """,
        typist.err());
  }

  @Test
  void moreNamesThanNeededAreNotIgnored() {
    assertEquals(2, typist.type("check", "one", "two"));
    assertEquals(
        """
        entracte: too many names: two
          A name that holds blanks is put in quotation marks.
          Add --help to see what can be typed.
        """,
        typist.err());
    assertEquals(2, typist.type("ports", "piano"));
    assertEquals(
        """
        entracte: ports takes no name, and there is piano
          Add --help to see what can be typed.
        """,
        typist.err());
  }

  @Test
  void anAimThatIsNoneIsRefused() {
    assertEquals(2, typist.type("plan", "--aim", "lucky", "sets/any"));
    assertEquals(
        "entracte: an aim is fewest, fastest or even, not lucky",
        typist.err().lines().findFirst().orElse(""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "NaN", "Infinity", "1e9"})
  void aSearchThatNeverBeginsOrEndsIsRefused(String seconds) {
    assertEquals(2, typist.type("plan", "--seconds", seconds, "sets/any"));
    assertEquals(
        "entracte: a search takes more than 0 and up to 86400 seconds",
        typist.err().lines().findFirst().orElse(""));
  }

  @Test
  void helpIsGivenToWhoeverAsksInAWord() {
    assertEquals(0, typist.type("--help"));
    String all = typist.out();
    assertEquals(0, typist.type("help"));
    assertEquals(all, typist.out());
    assertEquals(0, typist.type("plan", "--help"));
    String plan = typist.out();
    assertEquals(0, typist.type("help", "plan"));
    assertEquals(plan, typist.out());
    assertEquals(2, typist.type("help", "paln"));
    assertEquals(
        """
        entracte: no command is called paln
          Did you mean plan?
          Add --help to see what can be typed.
        """,
        typist.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "plan"})
  void aSetWithoutANameIsRefused(String command) {
    assertEquals(2, typist.type(command, ""));
    assertEquals(
        """
        entracte: the name of a set is empty
          Name a set's folder or its file; a dot is the folder that you are in.
        """,
        typist.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "plan"})
  void aSetThatIsNotThereIsTrouble(String command) {
    assertEquals(3, typist.type(command, "no/such/set"));
    assertEquals(
        """
        entracte: there is no no/such/set
          Name a set's folder or its file.
        """,
        typist.err());
  }

  @Test
  void aSheetOfAnotherKindIsRefusedBeforeAnyWork() {
    assertEquals(2, typist.type("sheet", "no/such/set", "-o", "sheet.doc"));
    assertEquals(
        """
        entracte: a sheet is a .pdf, .txt, .svg or .png file, not sheet.doc
          Give the file a name that ends in one of them.
        """,
        typist.err());
  }

  @Test
  void lettersThatThePaperCannotHoldAreRefusedBeforeAnyWork() {
    assertEquals(
        2,
        typist.type("sheet", "no/set", "-o", "a.pdf", "--paper", "a5", "--from", "6 m", "--dim"));
    assertEquals(
        """
        entracte: letters of 52.4 mm leave no room on a5
          Come nearer with --distance, or take larger paper.
        """,
        typist.err());
  }

  @Test
  void anUnknownPageOrPaperIsToldWithItsNearest() {
    assertEquals(2, typist.type("sheet", "any", "-o", "a.pdf", "--pages", "order,patchs"));
    assertEquals(
        "entracte: pages are one of order, set-up, changeovers, patches, packing, count-in,"
            + " engineer, not patchs; did you mean patches?",
        typist.err().lines().findFirst().orElse(""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "plan", "order", "whatif", "sheet", "rehearse"})
  void everyCommandExplainsItselfWithinEightyColumns(String command) {
    assertEquals(0, typist.type(command, "--help"));
    List<String> lines = typist.out().lines().toList();
    assertTrue(lines.stream().allMatch(line -> line.length() <= 80), typist.out());
    String example = "  java -jar target/entracte.jar " + command + " sets/";
    assertTrue(lines.stream().anyMatch(line -> line.startsWith(example)), typist.out());
  }

  @Test
  void theHelpReadsLikeThis() {
    typist.type("check", "--help");
    assertEquals(
        """
        Usage: entracte check [-hq] [--json] [--stage] SET
        Tells every mistake in a set at once: where it stands, what is wrong, what
        helps.
              SET       The set's folder (which holds set.yaml) or its file.
          -q, --quiet   Say only what matters most.
          -h, --help    Say this.
              --json    Print the findings as JSON, for other programs.
              --stage   Also try what the stage needs: journal, disk, terminal,
                          letters, power, clock, MIDI ports and pedal. Nothing is sent
                          to the gear. Ends with 3 if something is not ready.

        Ends with 1 if there are errors, 0 if not. Examples:
          java -jar target/entracte.jar check sets/kitchen-table
          java -jar target/entracte.jar check sets/kitchen-table --stage
        """,
        typist.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "plan", "order", "whatif", "sheet", "rehearse"})
  void theExamplesNameSetsThatExist(String command) {
    typist.type(command, "--help");
    List<String> sets =
        typist
            .out()
            .lines()
            .filter(line -> line.startsWith("  java"))
            .map(line -> line.replaceFirst(".* (sets/\\S+).*", "$1"))
            .toList();
    assertTrue(!sets.isEmpty() && sets.stream().allMatch(s -> Files.exists(Path.of(s))), "" + sets);
  }

  @Test
  void aMistakeOfTheProgramIsALineAndAReportNeverATrace() throws java.io.IOException {
    Typist unlucky =
        new Typist(
            (set, options) -> {
              throw new IllegalStateException("two plugs in one jack\nmore");
            });
    assertEquals(70, unlucky.type("plan", "sets/kitchen-table"));
    List<String> lines = unlucky.err().lines().toList();
    assertEquals(
        "entracte: the program failed: IllegalStateException, two plugs in one jack", lines.get(0));
    String begin = "  This is a mistake in the program, not in your set. Report: ";
    assertTrue(lines.get(1).startsWith(begin), unlucky.err());
    assertEquals(2, lines.size());
    Path report = Path.of(lines.get(1).substring(begin.length()));
    assertTrue(Files.readString(report).contains("at entracte.cli.ProgramTest"));
    Files.delete(report);
  }

  @Test
  void aFileIsNeverTakenForWhatWasTyped() {
    assertEquals(3, typist.type("check", "@pom.xml"));
    assertEquals("entracte: there is no @pom.xml", typist.err().lines().findFirst().orElse(""));
  }

  @Test
  void aFullMemoryIsToldWithWhatHelps() {
    Typist unlucky =
        new Typist(
            (set, options) -> {
              throw new OutOfMemoryError("too many songs");
            });
    assertEquals(3, unlucky.type("plan", "sets/kitchen-table"));
    assertEquals(
        """
        entracte: the # MB of memory that Java may use are too few for this
          Allow more, as in: java -Xmx4g -jar target/entracte.jar; or take fewer songs at once.
        """,
        unlucky.err().replaceFirst("[0-9]+ MB", "# MB"));
  }

  @Test
  void noColourIsAWordOfAnyKind() {
    assertTrue(Streams.mayColour(Map.of("TERM", "xterm")));
    assertTrue(Streams.mayColour(Map.of("TERM", "xterm", "NO_COLOR", "")));
    assertEquals(false, Streams.mayColour(Map.of("TERM", "xterm", "NO_COLOR", "1")));
    assertEquals(false, Streams.mayColour(Map.of("TERM", "dumb")));
  }
}
