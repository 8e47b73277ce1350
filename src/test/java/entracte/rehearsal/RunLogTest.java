package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunLogTest {
  private static final Makeup MAKEUP = new Makeup(Map.of(Work.READ, 9.1, Work.PLUG, 8.25));
  private static final Run WHOLE =
      new Run(
          Instant.parse("2026-03-01T19:02:11Z"),
          Run.Where.REHEARSAL,
          "Bread Clock",
          "3f2a9c10aa",
          41.2,
          1,
          MAKEUP,
          List.of());
  private static final Run SINGLY =
      new Run(
          Instant.parse("2026-03-01T19:04:00.5Z"),
          Run.Where.STAGE,
          "Slack: Water",
          "00ff00ff00",
          5.25,
          0,
          MAKEUP,
          List.of(
              new Run.Split(3, new Makeup(Map.of(Work.READ, 1.5, Work.TURN, 1.25))),
              new Run.Split(2.25, new Makeup(Map.of(Work.READ, 1.5)))));

  @TempDir Path folder;

  private RunLog log() {
    return RunLog.beside(folder);
  }

  @Test
  void theLogReadsLikeThis() throws IOException {
    log().add(WHOLE);
    log().add(SINGLY);
    assertEquals(
        """
        # Rehearsal log of entracte. One line for each timed changeover; times in seconds.
        # Lines are only added. One without "end" was cut off and is passed over.
        2026-03-01T19:02:11Z|rehearsal|to: Bread Clock|moves: 3f2a9c10aa|took: 41.20|slips: 1|\
        expected: read 9.10, plug 8.25|end
        2026-03-01T19:04:00.500Z|stage|to: Slack: Water|moves: 00ff00ff00|took: 5.25|slips: 0|\
        expected: read 9.10, plug 8.25|\
        each: 3.00 of read 1.50, turn 1.25; 2.25 of read 1.50|end
        """,
        Files.readString(folder.resolve("rehearsal.log")).replace('\t', '|'));
  }

  @Test
  void whatIsWrittenIsReadAgain() throws IOException {
    log().add(WHOLE);
    log().add(SINGLY);
    assertEquals(new RunLog.Contents(List.of(WHOLE, SINGLY), List.of()), log().read());
  }

  @Test
  void aSetThatWasNeverRehearsedHasAnEmptyLog() throws IOException {
    assertEquals(new RunLog.Contents(List.of(), List.of()), log().read());
  }

  @Test
  void aRunThatIsWithdrawnDoesNotCountButItsLineStays() throws IOException {
    log().add(WHOLE);
    log().add(SINGLY);
    log().withdraw(WHOLE);
    assertEquals(List.of(SINGLY), log().read().runs());
    assertEquals(5, Files.readAllLines(folder.resolve("rehearsal.log")).size());
  }

  /** Power may fail at any byte: the lines before stay, and what is added later is whole. */
  @Test
  void cutOffAnywhereItLosesNothingButTheLastLine() throws IOException {
    log().add(WHOLE);
    long first = Files.size(log().file());
    log().add(SINGLY);
    byte[] whole = Files.readAllBytes(log().file());
    for (int length = (int) first; length < whole.length - 1; length++) {
      Files.write(log().file(), Arrays.copyOf(whole, length));
      RunLog.Contents cut = log().read();
      assertEquals(List.of(WHOLE), cut.runs(), "cut at " + length);
      assertEquals(
          length == first
              ? List.of()
              : List.of("The last line of rehearsal.log was cut off and is left out."),
          log().notes());
      log().add(SINGLY);
      assertEquals(List.of(WHOLE, SINGLY), log().read().runs(), "cut at " + length);
    }
  }

  /** Before a rehearsal begins, not after twenty moves; and without leaving an empty file. */
  @Test
  void whetherRunsCanBeAddedIsFoundOutWithoutAddingAnything() throws IOException {
    assertEquals(Optional.empty(), log().trouble());
    assertTrue(Files.notExists(log().file()));
    Files.createDirectory(log().file());
    assertEquals(Optional.of(log().file() + " is a folder"), log().trouble());
    RunLog nowhere = RunLog.in(folder.resolve("not there").resolve("rehearsal.log"));
    assertEquals(Optional.of(nowhere.file() + " may not be read or changed"), nowhere.trouble());
  }

  @Test
  void aLineThatSomebodySpoiltIsNoted() throws IOException {
    log().add(WHOLE);
    log().add(SINGLY);
    String spoilt = Files.readString(log().file()).replace("took: 41.20", "took: ages");
    Files.writeString(log().file(), spoilt, StandardCharsets.UTF_8);
    assertEquals(List.of(SINGLY), log().read().runs());
    assertEquals(List.of("Line 3 of rehearsal.log cannot be read and is left out."), log().notes());
  }

  @Test
  void aNameWithATabDoesNotBreakTheLine() throws IOException {
    Run odd =
        new Run(WHOLE.when(), WHOLE.where(), "a\tb\nc", "m", 1, 0, new Makeup(Map.of()), List.of());
    log().add(odd);
    assertEquals("a b c", log().read().runs().get(0).to());
  }

  @Test
  void aSetWithAFileOfItsOwnNameHasALogOfThatName() {
    Path tour = folder.resolve("tour.yaml");
    assertEquals(folder.resolve("tour.rehearsal.log"), RunLog.beside(tour).file());
    Path set = folder.resolve("set.yaml");
    assertEquals(folder.resolve("rehearsal.log"), RunLog.beside(set).file());
  }
}
