package entracte.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.Change;
import entracte.cue.Ear;
import entracte.cue.Verb;
import entracte.journal.JournalRead.Damage;
import entracte.stage.Basis;
import entracte.stage.Event;
import entracte.stage.Input;
import entracte.stage.Move;
import entracte.stage.SmallShow;
import entracte.stage.TrueRig;
import entracte.stage.Way;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
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
    Map<String, String> jumpers = Map.of("filter 1.other slope", "3-pole");
    small.take(new Event.Planned(small.now, 10, List.of(), List.of(), "", jumpers));
    small.take(new Event.Planned(small.now, 10, List.of(1), List.of(toTheEar()), ""));
    TrueRig rig = new TrueRig(List.of(), Map.of("osc 1.octave", "8"), jumpers);
    small.take(new Event.Begun(small.now, "again", List.of(1), rig));
    small.take(new Event.Resumed(small.now));
    Basis basis = new Basis(Map.of("set.yaml", "1"), Optional.of(small.show.outline()));
    small.take(new Event.Begun(small.now, "again", List.of(1), TrueRig.bare(), basis));
    small.take(new Event.Resumed(small.now, basis, true));
    return small.events;
  }

  /** Whatever a move can leave changed but cords and controls. */
  private static Way toTheEar() {
    Ear ear =
        new Ear(
            Set.of("keys.pitch to osc 1.pitch"),
            Map.of("keys pitch", 2L),
            Map.of("octave", "8"),
            "to E2");
    List<Change> changes =
        List.of(
            new Change.Level(true),
            new Change.Touched("osc 2"),
            new Change.Tuned("osc 1", ear),
            new Change.Level(false));
    Move move = new Move(Verb.TUNE, "TUNE osc 1", 0, List.of(), changes, false);
    return new Way(1, false, List.of(move), 12.5, 3, List.of("amp 1 gain"));
  }

  private void write(List<Event> events) throws IOException {
    try (JournalFile journal = JournalFile.open(file())) {
      for (Event event : events) {
        journal.add(event);
        journal.tell(event.atMillis(), "sent", "piano was sent C0 04");
      }
    }
  }

  @Test
  void everyEventComesBackAsItWas() throws IOException {
    write(night());
    JournalRead read = JournalFile.read(file());
    assertEquals(night(), read.events());
    assertEquals(Damage.NONE, read.damage());
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
      JournalRead read = JournalFile.read(file());
      assertEquals(night().subList(0, read.events().size()), read.events());
      assertTrue(read.goodLength() <= length);
      assertEquals(length, read.goodLength() + read.dropped());
      assertEquals(read.dropped() == 0 ? Damage.NONE : Damage.TORN, read.damage());
    }
  }

  @Test
  void writingCarriesOnBehindTheLastWholeLine() throws IOException {
    write(night());
    Files.writeString(file(), "0badc0de 12\tpres", StandardOpenOption.APPEND);
    JournalRead torn = JournalFile.read(file());
    assertEquals(Damage.TORN, torn.damage());
    assertEquals(16, torn.dropped());
    Event more = new Event.Pressed(77, Input.NEXT);
    try (JournalFile journal = JournalFile.open(file())) {
      journal.add(more);
    }
    JournalRead read = JournalFile.read(file());
    assertEquals(night().size() + 1, read.events().size());
    assertEquals(more, read.events().get(read.events().size() - 1));
    assertEquals(Damage.NONE, read.damage());
  }

  @Test
  void aByteThatChangedEndsWhatIsBelieved() throws IOException {
    write(night());
    byte[] bytes = Files.readAllBytes(file());
    bytes[bytes.length / 2] ^= 1;
    Files.write(file(), bytes);
    JournalRead read = JournalFile.read(file());
    assertTrue(read.events().size() < night().size());
    assertEquals(night().subList(0, read.events().size()), read.events());
    assertEquals(Damage.SPOILT, read.damage());
  }

  @Test
  void whatNobodyWroteAsAJournalIsNone() throws IOException {
    for (String text : List.of("my notes for tonight", "0badc0ffee", "\n", "0badc0de-x\nmore\n")) {
      Files.writeString(file(), text);
      assertEquals(Damage.ALIEN, JournalFile.read(file()).damage(), text);
    }
  }

  /** Linux offers a device that is always full. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aFullDiskIsToldWithEveryLine() throws IOException {
    try (JournalFile journal = JournalFile.open(Path.of("/dev/full"))) {
      for (int line = 0; line < 3; line++) {
        Event event = new Event.Resumed(line);
        assertThrows(IOException.class, () -> journal.add(event));
      }
    }
  }

  @Test
  void aJournalThatCannotBeKeptSaysWhyAndMakesNoFile() throws IOException {
    try (JournalFile journal = JournalFile.without("no room", JournalRead.nothing())) {
      IOException told = assertThrows(IOException.class, () -> journal.add(new Event.Resumed(1)));
      assertEquals("no room", told.getMessage());
    }
    assertTrue(Files.notExists(file()));
  }

  @Test
  void oneNightIsPlayedByOneProgram() throws IOException {
    try (JournalFile first = JournalFile.open(file())) {
      first.add(new Event.Resumed(1));
      assertThrows(JournalFile.InUse.class, () -> JournalFile.open(file()).close());
    }
  }
}
