package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StreamsTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  @Test
  void outputIsUtf8WithPlainLineFeedsWhateverTheMachineLikes() {
    Streams streams = new Streams(out, OutputStream.nullOutputStream(), false, false);
    streams.line("Pi\u00E8ce \u266D");
    streams.close();
    assertArrayEquals("Pi\u00E8ce \u266D\n".getBytes(StandardCharsets.UTF_8), out.toByteArray());
  }

  @Test
  void aNameCannotSteerTheTerminal() {
    Streams streams = new Streams(out, OutputStream.nullOutputStream(), false, false);
    streams.line("\u001B[2Jgone\u009B2J");
    streams.close();
    assertEquals("?[2Jgone?2J\n", out.toString(StandardCharsets.UTF_8));
  }

  @Test
  void aDumbTerminalAndWhoeverSaysNoGetNoEscapes() {
    assertTrue(Streams.mayColour(Map.of("TERM", "xterm")));
    assertFalse(Streams.mayColour(Map.of("TERM", "dumb")));
    assertFalse(Streams.mayColour(Map.of("TERM", "xterm", "NO_COLOR", "1")));
  }

  @Test
  void aReaderThatLeavesIsNoTrouble() {
    assertEquals(Optional.empty(), afterWriting(new Broken("Broken pipe")));
  }

  @Test
  void aFullDiskIs() {
    assertEquals(
        Optional.of("No space left on device"),
        afterWriting(new Broken("No space left on device")));
  }

  private static Optional<String> afterWriting(OutputStream target) {
    Streams streams = new Streams(target, OutputStream.nullOutputStream(), false, false);
    streams.line("a line");
    return streams.close();
  }

  private static final class Broken extends OutputStream {
    private final String message;

    Broken(String message) {
      this.message = message;
    }

    @Override
    public void write(int single) throws IOException {
      throw new IOException(message);
    }
  }
}
