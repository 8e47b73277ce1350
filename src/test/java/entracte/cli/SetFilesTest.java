package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class SetFilesTest {
  private static final Instant READING = Instant.parse("2026-05-01T20:00:00Z");

  @TempDir Path folder;
  private Path rig;

  @BeforeEach
  void aRigSavedLongAgo() throws IOException {
    rig = Files.writeString(folder.resolve("rig.yaml"), "rig: Small\n");
    saved(rig, READING.minusSeconds(3600));
  }

  private static void saved(Path file, Instant when) throws IOException {
    Files.setLastModifiedTime(file, FileTime.from(when));
  }

  private SetFiles asRead() {
    return SetFiles.asRead(folder, List.of(rig), READING);
  }

  @Test
  void whatNobodyTouchedIsTheSame() {
    SetFiles read = asRead();
    assertEquals(List.of(), read.now().changedSince(read.sums()));
  }

  /** The sum is the CRC-32 of ISO 3309 and ITU-T V.42; 123456789 has the known one. */
  @Test
  void theSumIsThePublishedOne() throws IOException {
    Files.writeString(rig, "123456789");
    saved(rig, READING.minusSeconds(3600));
    assertEquals(Map.of("rig.yaml", "cbf43926"), asRead().sums());
  }

  @Test
  void whatIsSavedLaterIsTold() throws IOException {
    SetFiles read = asRead();
    Files.writeString(rig, "rig: Large\n");
    assertEquals(List.of("rig.yaml"), read.now().changedSince(read.sums()));
    assertEquals("rig.yaml was changed", SetFiles.say(List.of("rig.yaml")));
  }

  @Test
  void ofWhatWasSavedWhileItWasReadNobodyKnowsWhatWasRead() throws IOException {
    saved(rig, READING.plusMillis(200));
    SetFiles read = asRead();
    assertEquals(List.of("rig.yaml"), read.now().changedSince(read.sums()));
  }

  @Test
  void whatIsGoneIsChanged() throws IOException {
    SetFiles read = asRead();
    Files.delete(rig);
    assertEquals(List.of("rig.yaml"), read.now().changedSince(read.sums()));
  }
}
