package entracte.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import entracte.stage.Around;
import entracte.stage.Frame;
import entracte.stage.Input;
import entracte.stage.Screen;
import entracte.stage.SmallShow;
import java.util.Map;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Painted and heard through a terminal in memory, as a person would. */
final class StageScreenTest {
  private final MemoryTerminal terminal = new MemoryTerminal(80, 24);
  private final LinkedBlockingQueue<Key> keys = new LinkedBlockingQueue<>();

  private static Frame frame(int width, int height) {
    SmallShow small = new SmallShow().begin().next(6);
    Around around = new Around(small.now, "20:41", Map.of("Pedal", Around.Port.OK), "");
    return Screen.draw(small.show, small.night, around, width, height);
  }

  @Test
  void whatWasDrawnIsPaintedInEveryPalette() throws Exception {
    for (Palette palette : Palette.values()) {
      try (StageScreen screen = StageScreen.on(terminal, palette, keys::add)) {
        screen.show(frame(screen.width(), screen.height()));
        assertEquals(frame(80, 24).rows(), terminal.rows(), palette.name());
      }
    }
  }

  @Test
  void oneColourIsEnough() throws Exception {
    try (StageScreen screen = StageScreen.on(terminal, Palette.ONE, keys::add)) {
      screen.show(frame(80, 24));
      boolean marked = false;
      for (int y = 0; y < 24; y++) {
        for (int x = 0; x < 80; x++) {
          assertEquals(TextColor.ANSI.DEFAULT, terminal.getCharacter(x, y).getForegroundColor());
          marked |= terminal.getCharacter(x, y).getModifiers().contains(SGR.REVERSE);
        }
      }
      assertTrue(marked);
    }
  }

  @Test
  void nothingBlinks() {
    for (Palette palette : Palette.values()) {
      for (entracte.stage.Style style : entracte.stage.Style.values()) {
        assertTrue(!palette.marks(style).contains(SGR.BLINK));
      }
    }
  }

  @Test
  void thePaletteIsChosenByWhatTheTerminalSays() {
    assertEquals(Palette.FULL, Palette.of(Map.of("COLORTERM", "truecolor"), true));
    assertEquals(Palette.SIXTEEN, Palette.of(Map.of("TERM", "xterm"), true));
    assertEquals(Palette.ONE, Palette.of(Map.of("COLORTERM", "truecolor"), false));
  }

  private Key press(KeyStroke stroke) throws InterruptedException {
    terminal.addInput(stroke);
    return keys.poll(10, TimeUnit.SECONDS);
  }

  @Test
  void theKeysOfPageTurnPedalsAreNextAndBack() throws Exception {
    try (StageScreen screen = StageScreen.on(terminal, Palette.ONE, keys::add)) {
      assertEquals(80, screen.width());
      assertEquals(new Key.Says(Input.NEXT), press(new KeyStroke(KeyType.PageDown)));
      assertEquals(new Key.Says(Input.NEXT), press(new KeyStroke(KeyType.ArrowRight)));
      assertEquals(new Key.Says(Input.NEXT), press(new KeyStroke(' ', false, false)));
      assertEquals(new Key.Says(Input.BACK), press(new KeyStroke(KeyType.PageUp)));
      assertEquals(new Key.Says(Input.BACK), press(new KeyStroke(KeyType.ArrowLeft)));
      assertEquals(new Key.Says(Input.MENU), press(new KeyStroke(KeyType.F1)));
      assertEquals(new Key.Says(Input.CLOSE), press(new KeyStroke(KeyType.Escape)));
      assertEquals(new Key.Letter('x'), press(new KeyStroke('x', false, false)));
      assertEquals(new Key.Leaves(), press(new KeyStroke('c', true, false)));
    }
  }

  /** Unknown sequences come through as Alt with a letter. */
  @Test
  void whatLeaksFromUnknownSequencesSaysNothing() throws Exception {
    try (StageScreen screen = StageScreen.on(terminal, Palette.ONE, keys::add)) {
      assertEquals(24, screen.height());
      terminal.addInput(new KeyStroke('[', false, true));
      assertEquals(new Key.Says(Input.QUIET), press(new KeyStroke(KeyType.F3)));
    }
  }

  @Test
  void anotherSizeIsTaken() throws Exception {
    try (StageScreen screen = StageScreen.on(terminal, Palette.ONE, keys::add)) {
      screen.show(frame(screen.width(), screen.height()));
      terminal.setTerminalSize(new TerminalSize(40, 12));
      terminal.setCursorPosition(0, 1);
      terminal.putString("what a terminal left when it broke lines");
      assertEquals(new Key.Resized(), keys.poll(10, TimeUnit.SECONDS));
      screen.measure();
      assertEquals(40, screen.width());
      screen.show(frame(screen.width(), screen.height()));
      assertEquals(frame(40, 12).rows(), terminal.rows());
    }
  }
}
