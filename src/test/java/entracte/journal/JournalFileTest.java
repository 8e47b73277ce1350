package entracte.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.stage.Event;
import entracte.stage.Input;
import entracte.stage.SmallShow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written comes back, and what was torn does not. */
final class JournalFileTest {
  @TempDir Path folder;

  private Path file() {
    return folder.resolve("stage.journal");
  }

  private static List<Event> night() {
    SmallShow small = new SmallShow().begin();
    small.next(4).choose("swap").answer().next(3).press(Input.QUIET);
    small.take(new Event.Unplanned(small.now, 9, "tabs\tand\nlines \\ survive"));
    small.take(new Event.Resumed(small.now));
    return small.events;
  }

  private void write(List<Event> events) throws IOException {
    try (JournalFile journal = JournalFile.open(file(), 0)) {
      for (Event event : events) {
        journal.add(event);
        journal.tell(event.atMillis(), "sent", "piano was sent C0 04");
      }
    }
  }

  @Test
  void everyEventComesBackAsItWas() throws IOException {
    write(night());
    JournalFile.Read read = JournalFile.read(file());
    assertEquals(night(), read.events());
    assertEquals("", read.note());
  }

  @Test
  void aJournalThatIsNotThereIsEmpty() throws IOException {
    assertEquals(List.of(), JournalFile.read(file()).events());
  }

  /** The file is cut at every length; what is read is always a beginning of the night. */
  @Test
  void whereverItIsTornABeginningIsLeft() throws IOException {
    write(night());
    byte[] whole = Files.readAllBytes(file());
    for (int length = 0; length < whole.length; length += 7) {
      Files.write(file(), Arrays.copyOf(whole, length));
      JournalFile.Read read = JournalFile.read(file());
      assertEquals(night().subList(0, read.events().size()), read.events());
      assertTrue(read.goodLength() <= length);
      assertEquals(read.goodLength() == length, read.note().isEmpty());
    }
  }

  @Test
  void writingCarriesOnBehindTheLastWholeLine() throws IOException {
    write(night());
    Files.writeString(file(), "0badc0de 12\tpres", StandardOpenOption.APPEND);
    JournalFile.Read torn = JournalFile.read(file());
    assertTrue(torn.note().startsWith("The journal's end was torn; 16 bytes"), torn.note());
    Event more = new Event.Pressed(77, Input.NEXT);
    try (JournalFile journal = JournalFile.open(file(), torn.goodLength())) {
      journal.add(more);
    }
    JournalFile.Read read = JournalFile.read(file());
    assertEquals(night().size() + 1, read.events().size());
    assertEquals(more, read.events().get(read.events().size() - 1));
    assertEquals("", read.note());
  }

  @Test
  void aByteThatChangedEndsWhatIsBelieved() throws IOException {
    write(night());
    byte[] bytes = Files.readAllBytes(file());
    bytes[bytes.length / 2] ^= 1;
    Files.write(file(), bytes);
    JournalFile.Read read = JournalFile.read(file());
    assertTrue(read.events().size() < night().size());
    assertEquals(night().subList(0, read.events().size()), read.events());
  }

  @Test
  void oneNightIsPlayedByOneProgram() throws IOException {
    try (JournalFile first = JournalFile.open(file(), 0)) {
      first.add(new Event.Resumed(1));
      assertThrows(Exception.class, () -> JournalFile.open(file(), 0).close());
    }
  }
}
