package entracte.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.screen.Screen;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.Terminal;
import entracte.stage.Frame;
import java.io.IOException;
import java.util.function.Consumer;

/** The front door of this package: a terminal that shows frames and hears keys. */
public final class StageScreen implements AutoCloseable {
  private final Screen screen;
  private final Palette palette;
  private final Consumer<Key> told;
  private TerminalSize size;

  /** Terminals shuffle what they show when their size changes; what is there is not known then. */
  private boolean stale = true;

  private StageScreen(Terminal terminal, Palette palette, Consumer<Key> told) throws IOException {
    this.screen = new TerminalScreen(terminal);
    this.palette = palette;
    this.told = told;
    screen.startScreen();
    screen.setCursorPosition(null);
    size = screen.getTerminalSize();
    terminal.addResizeListener((where, newSize) -> told.accept(new Key.Resized()));
  }

  /** Takes the terminal that the program was started in; keys are told on another thread. */
  public static StageScreen open(Palette palette, Consumer<Key> told) throws IOException {
    return on(new StageTerminal(), palette, told);
  }

  static StageScreen on(Terminal terminal, Palette palette, Consumer<Key> told) throws IOException {
    StageScreen stage = new StageScreen(terminal, palette, told);
    Thread reader = new Thread(stage::readKeys, "hears the keys");
    reader.setDaemon(true);
    reader.start();
    return stage;
  }

  public int width() {
    return size.getColumns();
  }

  public int height() {
    return size.getRows();
  }

  /** Takes a new size of the window, if it has one; on the thread that paints. */
  public void measure() {
    TerminalSize changed = screen.doResizeIfNecessary();
    if (changed != null) {
      size = changed;
      stale = true;
    }
  }

  /** Paints what has changed, and everything in a window of a new size. */
  public void show(Frame frame) throws IOException {
    for (int y = 0; y < Math.min(frame.height(), height()); y++) {
      for (int x = 0; x < Math.min(frame.width(), width()); x++) {
        int glyph = frame.glyph(x, y);
        if (glyph != Frame.TAIL) {
          screen.setCharacter(x, y, cell(glyph, frame, x, y));
        }
      }
    }
    screen.refresh(stale ? Screen.RefreshType.COMPLETE : Screen.RefreshType.DELTA);
    stale = false;
  }

  private TextCharacter cell(int glyph, Frame frame, int x, int y) {
    return TextCharacter.fromString(
        Character.toString(glyph),
        palette.ink(frame.style(x, y)),
        palette.ground(),
        palette.marks(frame.style(x, y)))[0];
  }

  private void readKeys() {
    try {
      while (true) {
        KeyStroke stroke = screen.readInput();
        Keys.of(stroke).ifPresent(told);
        if (Keys.isEnd(stroke)) {
          return;
        }
      }
    } catch (IOException gone) {
      told.accept(new Key.Leaves());
    }
  }

  /** Gives the terminal back as it was. */
  @Override
  public void close() throws IOException {
    screen.stopScreen();
  }
}
