package entracte.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.UnixLikeTerminal.CtrlCBehaviour;
import com.googlecode.lanterna.terminal.ansi.UnixTerminal;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** The terminal that the program was started in. */
final class StageTerminal extends UnixTerminal {
  private static final int BUFFER = 1 << 16;

  private final Gate gate;

  StageTerminal() throws IOException {
    this(
        new Gate(
            new BufferedOutputStream(
                new WithoutNul(new FileOutputStream(FileDescriptor.out)), BUFFER)));
  }

  private StageTerminal(Gate gate) throws IOException {
    super(System.in, gate, StandardCharsets.UTF_8, CtrlCBehaviour.TRAP);
    this.gate = gate;
  }

  /** A signal may come while another thread paints: what that one writes from now on is lost. */
  @Override
  public void exitPrivateMode() throws IOException {
    gate.leaveTo(Thread.currentThread());
    super.exitPrivateMode();
  }

  /** Lanterna would ask the terminal by an escape sequence, which a buffer holds back. */
  @Override
  protected TerminalSize findTerminalSize() throws IOException {
    String[] rowsAndColumns = runSTTYCommand("size").trim().split("\\s+");
    return new TerminalSize(
        Integer.parseInt(rowsAndColumns[1]), Integer.parseInt(rowsAndColumns[0]));
  }

  @Override
  protected void keyStrokeSignalsEnabled(boolean enabled) throws IOException {
    if (enabled) {
      super.keyStrokeSignalsEnabled(true);
    } else {
      runSTTYCommand("-ixon", "intr", "undef", "susp", "undef", "quit", "undef");
    }
  }

  /** Lets everybody through until somebody leaves the terminal, and then only that one. */
  private static final class Gate extends FilterOutputStream {
    private volatile Thread leaver;

    Gate(OutputStream out) {
      super(out);
    }

    void leaveTo(Thread thread) {
      leaver = thread;
    }

    @Override
    public void write(int letter) throws IOException {
      write(new byte[] {(byte) letter}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
      if (leaver == null || leaver == Thread.currentThread()) {
        out.write(bytes, from, count);
      }
    }
  }

  /** Lanterna writes a NUL behind every character of two bytes. */
  private static final class WithoutNul extends FilterOutputStream {
    WithoutNul(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
      byte[] kept = new byte[count];
      int size = 0;
      for (int i = from; i < from + count; i++) {
        if (bytes[i] != 0) {
          kept[size++] = bytes[i];
        }
      }
      out.write(kept, 0, size);
    }
  }
}
