package entracte.journal;

import entracte.stage.Event;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Any bytes as a journal, and as the lines of one whose checksums are right: a checksum stops a
 * fuzzer as it stops a torn line.
 */
public final class JournalFuzz {
  private static Path file;

  private JournalFuzz() {}

  /** Called with ever new bytes by the fuzzer, and by a test with those that once did harm. */
  public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
    if (file == null) {
      file = Files.createTempFile("entracte-fuzz-", ".journal");
    }
    Files.write(file, bytes);
    JournalRead read = JournalFile.read(file);
    if (read.goodLength() + read.dropped() != bytes.length) {
      throw new AssertionError("what is good and what is dropped are not the whole: " + read);
    }
    new String(bytes, StandardCharsets.UTF_8).lines().forEach(JournalFuzz::line);
  }

  private static void line(String line) {
    Optional<Event> event = EventText.read(line);
    if (!event.equals(event.flatMap(e -> EventText.read(EventText.write(e))))) {
      throw new AssertionError("an event does not come back as it was: " + line);
    }
  }
}
