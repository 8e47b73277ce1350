package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.plan.Options.Progress;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ProgressLineTest {
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final ProgressLine line = line(true);

  private ProgressLine line(boolean colour) {
    return new ProgressLine(new Streams(OutputStream.nullOutputStream(), err, colour, true));
  }

  @Test
  void aShortSearchShowsNothing() {
    line.show(new Progress(85, 80, 0.2));
    line.clear();
    assertEquals("", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void aLongOneShowsOneLineThatIsGoneAtTheEnd() {
    line.show(new Progress(85, 80, 1));
    line.show(new Progress(84, 80, 1.1));
    line.clear();
    assertEquals(
        "\r\u001B[Kbest so far 85 moves, at least 80, 1 s\r\u001B[K",
        err.toString(StandardCharsets.UTF_8));
  }

  /** Where TERM is dumb, or NO_COLOR says no. */
  @Test
  void withoutColourItIsGoneWithoutAnEscape() {
    ProgressLine plain = line(false);
    plain.say("seven so far");
    plain.say("six");
    plain.clear();
    assertEquals(
        "\r\rseven so far\r            \rsix\r   \r", err.toString(StandardCharsets.UTF_8));
  }
}
