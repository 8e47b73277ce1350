package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rehearsing the kitchen table, typed; each look at the clock finds it a second on. */
class RehearseTest {
  /** The way to Bread Clock. */
  private static final int STEPS = 10;

  @TempDir Path folder;

  private final Typist typist = new Typist();
  private String set;

  @BeforeEach
  void copyTheSet() throws IOException {
    Path from = Path.of("sets/kitchen-table");
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
        Path to = folder.resolve(from.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
    set = folder.toString();
  }

  private void rehearseOnce() {
    String enters = "\n".repeat(2 + STEPS);
    assertEquals(0, typist.hearing(enters + "q\n").type("rehearse", set, "--to", "2"));
  }

  @Test
  void aRunIsTimedLoggedAndSummedUp() throws IOException {
    rehearseOnce();
    assertTrue(typist.out().contains("10.0 s; 35 s to spare.\n"), typist.out());
    assertTrue(typist.out().contains("Kitchen Table. Times are learned from 1 timed run.\n"));
    List<String> log = Files.readAllLines(folder.resolve("rehearsal.log"));
    assertEquals(3, log.size());
    assertTrue(log.get(2).contains("\tto: Bread Clock\t"), log.get(2));
  }

  @Test
  void thePlanAndTheSheetThenUseWhatWasLearned() throws IOException {
    typist.type("plan", set, "-q");
    String before = typist.out();
    rehearseOnce();
    typist.type("plan", set, "-q");
    assertTrue(typist.out().endsWith("Times are learned from 1 timed run.\n"), typist.out());
    assertTrue(!before.equals(typist.out()));
    Path sheet = folder.resolve("sheet.txt");
    assertEquals(0, typist.type("sheet", set, "-o", sheet.toString()));
    assertTrue(Files.readString(sheet).contains("Times are learned from 1 timed run."));
    typist.type("plan", set, "--json");
    assertTrue(typist.out().contains("\"aboutTimes\": \"Times are learned from 1 timed run.\""));
    assertTrue(typist.out().contains("\"runs\": 1"));
  }

  @Test
  void theSummaryAloneAsksNothing() {
    rehearseOnce();
    assertEquals(0, typist.hearing("").type("rehearse", set, "--summary"));
    assertTrue(typist.out().contains("To 2 Bread Clock: "), typist.out());
    assertTrue(typist.out().lines().allMatch(line -> line.length() <= 80), typist.out());
  }

  @Test
  void theTimesGoToASpreadsheet() {
    rehearseOnce();
    assertEquals(0, typist.type("rehearse", set, "--csv"));
    List<String> lines = typist.out().lines().toList();
    assertEquals("when,where,to,moves,run,seconds,expected,slips", lines.get(0));
    assertEquals(2, lines.size());
  }

  @Test
  void timesFromTheStageAreAdded() throws IOException {
    Path times = folder.resolve("times.csv");
    StringBuilder lines = new StringBuilder();
    for (int move = 1; move <= STEPS; move++) {
      lines.append("Bread Clock, ").append(move).append(", 4.5\n");
    }
    Files.writeString(times, lines + "Bread Clock, 1, 2\n");
    assertEquals(0, typist.type("rehearse", set, "--import", times.toString()));
    assertEquals("Added 1 run; lines that belong to no whole run of this plan: 1.\n", typist.out());
    assertTrue(Files.readString(folder.resolve("rehearsal.log")).contains("\tstage\t"));
  }

  @Test
  void timesThatAreNoneAreRefused() throws IOException {
    Path times = folder.resolve("times.csv");
    Files.writeString(times, "Bread Clock\n");
    assertEquals(3, typist.type("rehearse", set, "--import", times.toString()));
    assertTrue(
        typist.err().endsWith("times.csv: line 1 is not: changeover, move, seconds\n"),
        typist.err());
  }

  @Test
  void aSongThatIsNotInTheSetIsRefused() {
    assertEquals(2, typist.type("rehearse", set, "--to", "Bred Clock"));
    assertEquals(
        """
        entracte: no song of the set is called Bred Clock
          Give its name or its number, 1 to 3.
        """,
        typist.err());
  }

  @Test
  void nobodyToAnswerEndsItWithoutALog() {
    assertEquals(0, typist.hearing("").type("rehearse", set, "-q"));
    assertTrue(!Files.exists(folder.resolve("rehearsal.log")));
  }

  @Test
  void aLogThatCannotBeReadIsTrouble() throws IOException {
    Files.createDirectory(folder.resolve("rehearsal.log"));
    assertEquals(3, typist.type("plan", set));
    assertTrue(
        typist.err().startsWith("entracte: the rehearsal log cannot be used: "), typist.err());
  }

  @Test
  void aPlanForTheFewestSecondsClaimsNoProofOfThem() {
    assertEquals(0, typist.type("plan", set, "-q", "--aim", "fastest"));
    String told = typist.out().replaceAll("\\s+", " ");
    assertTrue(
        told.contains("Planned for the fewest seconds, of which nothing is proven; no plan"),
        typist.out());
    assertTrue(!told.contains("Proven"), typist.out());
  }
}
