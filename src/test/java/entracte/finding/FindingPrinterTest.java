package entracte.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class FindingPrinterTest {
  private static Finding error(Place place, String message, String advice) {
    return new Finding(Severity.ERROR, place, message, advice);
  }

  private static String print(Finding... findings) {
    return FindingPrinter.print(List.of(findings));
  }

  private static String printLine(String line, int column) {
    return print(error(new Place("set.yaml", 1, column, line), "odd", ""));
  }

  @Test
  void aFindingShowsItsLineACaretAndTheAdvice() {
    assertEquals(
        """
        night/set.yaml:3:6: error: "40 sec" is no time
          gap: 40 sec
               ^
          Write it like 40 s, 2:30 or 1 min.
        """,
        print(
            error(
                new Place("night/set.yaml", 3, 6, "gap: 40 sec"),
                "\"40 sec\" is no time",
                "Write it like 40 s, 2:30 or 1 min.")));
  }

  @Test
  void aFindingAboutAWholeFileHasNoLineToShow() {
    assertEquals(
        "night/set.yaml:1:1: error: there is no file \"night/set.yaml\"\n",
        print(error(Place.wholeFile("night/set.yaml"), "there is no file \"night/set.yaml\"", "")));
  }

  @Test
  void findingsAreSortedByFileLineAndColumnAndEachIsPrintedOnce() {
    Finding last = error(new Place("b.yaml", 1, 1, ""), "fourth", "");
    Finding line = error(new Place("a.yaml", 10, 1, ""), "third", "");
    Finding column = error(new Place("a.yaml", 9, 12, ""), "second", "");
    Finding first = new Finding(Severity.WARNING, new Place("a.yaml", 9, 2, ""), "first", "");
    assertEquals(
        """
        a.yaml:9:2: warning: first
        a.yaml:9:12: error: second
        a.yaml:10:1: error: third
        b.yaml:1:1: error: fourth
        """,
        print(last, line, column, first, last));
  }

  @Test
  void aTabIsShownAsBlanksSoThatTheCaretStandsRight() {
    assertEquals(
        """
        set.yaml:1:7: error: odd
              gap: 4
                   ^
        """,
        printLine("\tgap: 4", 7));
  }

  @Test
  void wideCharactersTakeTwoCellsAndMarksNone() {
    assertEquals(
        """
        set.yaml:1:6: error: odd
          夜の海: x
                  ^
        """,
        printLine("夜の海: x", 6));
    assertEquals(
        """
        set.yaml:1:8: error: odd
          e\u0301te\u0301: x
               ^
        """,
        printLine("e\u0301te\u0301: x", 8));
  }

  @Test
  void columnsCountCharactersBeyondTheFirstPlaneOnce() {
    assertEquals(
        """
        set.yaml:1:4: error: odd
          \uD834\uDD1E: x
             ^
        """,
        printLine("\uD834\uDD1E: x", 4));
  }

  @Test
  void whatWouldMoveTheCursorOrTurnTheWritingIsNotPassedOn() {
    assertEquals(
        """
        set.yaml:1:3: error: odd
          a?[2Jb?c
            ^
        """,
        printLine("a\u001B[2Jb\u202Ec", 3));
  }

  @Test
  void aCaretMayStandJustBehindTheLine() {
    assertEquals("set.yaml:1:4: error: odd\n  abc\n     ^\n", printLine("abc", 4));
    assertEquals("set.yaml:1:9: error: odd\n  abc\n     ^\n", printLine("abc", 9));
  }

  @Test
  void aLongLineIsCutAroundTheCaret() {
    String digits = "0123456789".repeat(30);
    assertEquals(
        "set.yaml:1:1: error: odd\n  " + digits.substring(0, 72) + "...\n  ^\n",
        printLine(digits, 1));
    assertEquals(
        "set.yaml:1:201: error: odd\n  ..."
            + digits.substring(152, 224)
            + "...\n  "
            + " ".repeat(51)
            + "^\n",
        printLine(digits, 201));
    assertEquals(
        "set.yaml:1:300: error: odd\n  ..."
            + digits.substring(251)
            + "\n  "
            + " ".repeat(51)
            + "^\n",
        printLine(digits, 300));
  }

  @Test
  void aLineThatFitsIsNotCut() {
    String line = "x".repeat(72);
    assertEquals(
        "set.yaml:1:72: error: odd\n  " + line + "\n  " + " ".repeat(71) + "^\n",
        printLine(line, 72));
  }

  @Test
  void theCaretStandsUnderItsCharacterWhereverALineIsCut() {
    String line = "ab\tc夜".repeat(40) + "!";
    for (int column = 1; column <= line.length(); column++) {
      Excerpt excerpt = Excerpt.of(line, column);
      int shown = 0;
      int index = 0;
      while (shown < excerpt.caret()) {
        shown += CellWidth.of(excerpt.text().codePointAt(index));
        index++;
      }
      char under = excerpt.text().charAt(index);
      char wanted = line.charAt(column - 1) == '\t' ? ' ' : line.charAt(column - 1);
      assertEquals(wanted, under, "column " + column);
    }
  }

  @Test
  void ofVeryManyFindingsTheFirstArePrintedAndTheRestCounted() {
    List<Finding> many =
        IntStream.rangeClosed(1, 5000)
            .mapToObj(n -> error(new Place("set.yaml", n, 1, ""), "odd", ""))
            .toList();
    List<String> lines = FindingPrinter.print(many).lines().toList();
    assertEquals(101, lines.size());
    assertEquals("set.yaml:100:1: error: odd", lines.get(99));
    assertEquals("and 4900 more; mend these first", lines.get(100));
    assertTrue(FindingPrinter.print(List.of()).isEmpty());
  }

  @Test
  void veryManyWarningsDoNotHideAnError() {
    List<Finding> many = new ArrayList<>();
    for (int line = 1; line <= 200; line++) {
      Place place = new Place("set.yaml", line, 1, "");
      many.add(new Finding(Severity.WARNING, place, "odd", ""));
    }
    many.add(error(new Place("set.yaml", 150, 1, ""), "wrong", ""));
    List<String> lines = FindingPrinter.print(many).lines().toList();
    assertEquals("set.yaml:99:1: warning: odd", lines.get(98));
    assertEquals("set.yaml:150:1: error: wrong", lines.get(99));
    assertEquals("and 101 more; mend these first", lines.get(100));
  }
}
