package entracte.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.Consumer;

/**
 * A terminal in memory. Lanterna's own waits for keys with a lock that painting needs too; this one
 * has a queue for them.
 */
public final class MemoryTerminal extends DefaultVirtualTerminal {
  private final LinkedBlockingQueue<KeyStroke> strokes = new LinkedBlockingQueue<>();

  public MemoryTerminal(int columns, int rows) {
    super(new TerminalSize(columns, rows));
  }

  /** The stage's screen in this window; keys are told on another thread. */
  public StageScreen stage(Consumer<Key> told) throws IOException {
    return StageScreen.on(this, Palette.ONE, told);
  }

  @Override
  public void addInput(KeyStroke stroke) {
    strokes.add(stroke);
  }

  @Override
  public KeyStroke pollInput() {
    return strokes.poll();
  }

  @Override
  public KeyStroke readInput() {
    try {
      return strokes.take();
    } catch (InterruptedException ended) {
      return new KeyStroke(KeyType.EOF);
    }
  }

  /** What can be read, without blanks at the ends of rows. */
  public List<String> rows() {
    List<String> rows = new ArrayList<>();
    for (int y = 0; y < getTerminalSize().getRows(); y++) {
      StringBuilder row = new StringBuilder();
      for (int x = 0; x < getTerminalSize().getColumns(); x++) {
        row.append(getCharacter(x, y).getCharacterString());
      }
      rows.add(row.toString().stripTrailing());
    }
    return rows;
  }
}
