package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file of a musician is there as a whole, or it is not there. */
class NewFileTest {
  @TempDir Path folder;

  private Path file() {
    return folder.resolve("stands.yaml");
  }

  @Test
  void whatWasThereStays() throws IOException {
    NewFile.write(file(), "mine");
    assertThrows(Stop.class, () -> NewFile.write(file(), "yours"));
    assertEquals("mine", Files.readString(file()));
  }

  @Test
  void halfAFileIsTakenAwaySoThatItsNameIsFreeOnceThereIsRoom() {
    Stop stop =
        assertThrows(
            Stop.class,
            () ->
                NewFile.write(
                    file(),
                    made -> {
                      Files.writeString(made, "state: af");
                      throw new FileSystemException("", null, "No space left on device");
                    }));
    assertEquals(file() + " cannot be written: No space left on device", stop.getMessage());
    assertFalse(Files.exists(file()));
  }
}
