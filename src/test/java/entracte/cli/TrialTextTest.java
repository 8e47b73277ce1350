package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What was tried for the stage, as it looks with colours and without. */
class TrialTextTest {
  private static final List<Trial> TRIALS =
      List.of(
          Trial.ready("disk", "There is room on it."),
          Trial.look("power", "Nothing is told.", "Plug it in."),
          Trial.notReady("port", "It is not there.", "Plug it in."));

  private static String printed(boolean colour) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Streams streams = new Streams(out, new ByteArrayOutputStream(), colour, false);
    TrialText.print(TRIALS, streams);
    streams.close();
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void withoutColoursTheWordsSayAll() {
    assertEquals(
        """
        ready      disk      There is room on it.
        look       power     Nothing is told.
                             Plug it in.
        NOT READY  port      It is not there.
                             Plug it in.
        Not ready: 1 of 3; to look at yourself: 1.
        """,
        printed(false));
  }

  /** Colours 32, 33 and 31 are green, yellow and red (ECMA-48, select graphic rendition). */
  @Test
  void withColoursTheSameWordsAreGreenYellowAndRed() {
    assertEquals(
        printed(false)
            .replace("ready    ", "\u001B[32mready\u001B[0m    ")
            .replace("look    ", "\u001B[33mlook\u001B[0m    ")
            .replace("NOT READY", "\u001B[31mNOT READY\u001B[0m"),
        printed(true));
  }

  @Test
  void aNameOutOfAFileSteersNoColour() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Streams streams = new Streams(out, new ByteArrayOutputStream(), true, false);
    streams.line("\u001B[5mword", 32, " \u001B[7mrest");
    streams.close();
    assertEquals("\u001B[32m?[5mword\u001B[0m ?[7mrest\n", out.toString(StandardCharsets.UTF_8));
  }
}
