package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.finding.FindingPrinter;
import entracte.read.SetReader;
import entracte.rehearsal.TimedMoves.Timed;
import entracte.setlist.SetList;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Times of the kitchen table, as spreadsheets write them. */
class TimesFileTest {
  private static SetList set;

  @BeforeAll
  static void readTheSet() {
    set = SetReader.read(Path.of("sets/kitchen-table")).setList().orElseThrow();
  }

  private static TimesFile.Read read(String text) {
    return TimesFile.read(Path.of("times.csv"), text.getBytes(StandardCharsets.UTF_8), set);
  }

  private static String told(String text) {
    return FindingPrinter.print(read(text).findings());
  }

  @Test
  void linesAreChangeoverMoveSeconds() {
    assertEquals(
        List.of(new Timed(2, "Bread Clock", 1, 2.5), new Timed(4, "Salt, Pepper", 12, 3)),
        read("# a comment\nBread Clock, 1, 2.5\n\n Salt, Pepper ,12,3 \n").times());
  }

  @Test
  void aLineOfHeadsAndQuotedNamesAreAsASpreadsheetWritesThem() {
    TimesFile.Read read = read("\uFEFFchangeover,move,seconds\r\n\"Blue Enamel\",1,4\r\n");
    assertEquals(List.of(new Timed(2, "Blue Enamel", 1, 4)), read.times());
    assertEquals(List.of(), read.findings());
  }

  @Test
  void semicolonsAreToldOnce() {
    assertEquals(
        """
        times.csv:1:12: error: semicolons stand between the fields
          Bread Clock;1;4,5
                     ^
          Write changeover, move, seconds, with commas between: Bread Clock, 3, 4.5.
        """,
        told("Bread Clock;1;4,5\nBread Clock;2;4,5\n"));
  }

  @Test
  void aCommaForTheDecimalPointIsKnownByTheSong() {
    assertEquals(
        """
        times.csv:2:17: error: a comma stands in the seconds
          Bread Clock, 1,4,5
                          ^
          Write them with a point: 4.5.
        """,
        told("changeover, move, seconds\nBread Clock, 1,4,5\n"));
  }

  @Test
  void everyMistakeHasItsPlace() {
    assertEquals(
        """
        times.csv:1:14: error: "first" is no move
          Bread Clock, first, 2
                       ^
          Moves count from 1.
        times.csv:2:14: error: "0" is no move
          Bread Clock, 0, 2
                       ^
          Moves count from 1.
        times.csv:3:17: error: "4.5 s" is no number of seconds
          Bread Clock, 2, 4.5 s
                          ^
          Write them like 4.5, without a unit.
        times.csv:4:15: error: a line has three fields, this one 2 fields
          Bread Clock, 3
                        ^
          Write changeover, move, seconds, with commas between: Bread Clock, 3, 4.5.
        """,
        told("Bread Clock, first, 2\nBread Clock, 0, 2\nBread Clock, 2, 4.5 s\nBread Clock, 3\n"));
  }

  @Test
  void timesBelowNothingAndBeyondAllAreNone() {
    for (String seconds : List.of("-2", "NaN", "Infinity")) {
      assertEquals(1, read("1, 1, " + seconds).findings().size(), seconds);
    }
  }

  @Test
  void theProgramsOwnRunsAreNotTakenInAgain() {
    assertEquals(
        """
        times.csv:1:1: error: --csv has printed this
          when,where,to,moves,run,seconds,expected,slips
          ^
          It keeps no times of moves. The runs are in rehearsal.log; to take them along, copy that.
        """,
        told("when,where,to,moves,run,seconds,expected,slips\na,b,c,d,1,2,3,4\n"));
  }
}
