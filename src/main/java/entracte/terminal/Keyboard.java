package entracte.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import java.util.function.Consumer;

/**
 * The keys of the terminal that the program was started in, told one by one without Enter. What
 * stands on the screen stays there, and lines can be printed as ever. Until it is closed, Ctrl-C is
 * a key.
 */
public final class Keyboard implements AutoCloseable {
  private final Terminal terminal;

  private Keyboard(Terminal terminal) {
    this.terminal = terminal;
  }

  /**
   * Begins to listen; keys are told on another thread.
   *
   * @throws IOException if the terminal cannot be had key by key
   */
  public static Keyboard open(Consumer<Key> told) throws IOException {
    return on(new StageTerminal(), told);
  }

  static Keyboard on(Terminal terminal, Consumer<Key> told) {
    Keyboard keyboard = new Keyboard(terminal);
    Thread reader = new Thread(() -> keyboard.read(told), "hears the keys");
    reader.setDaemon(true);
    reader.start();
    return keyboard;
  }

  /**
   * How many characters fit in a line.
   *
   * @throws IOException if the terminal does not say
   */
  public int columns() throws IOException {
    return size().getColumns();
  }

  /**
   * How many lines the terminal shows.
   *
   * @throws IOException if the terminal does not say
   */
  public int rows() throws IOException {
    return size().getRows();
  }

  private TerminalSize size() throws IOException {
    try {
      return terminal.getTerminalSize();
    } catch (IllegalArgumentException | IndexOutOfBoundsException unsaid) {
      throw new IOException("no size", unsaid); // of a terminal that tells no figures
    }
  }

  private void read(Consumer<Key> told) {
    try {
      while (true) {
        KeyStroke stroke = terminal.readInput();
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
    terminal.close();
  }
}
