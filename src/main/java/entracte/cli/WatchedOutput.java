package entracte.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/** Output that may break off: after the first failure it swallows the rest and remembers why. */
final class WatchedOutput extends OutputStream {
  private final OutputStream target;
  private Optional<String> trouble = Optional.empty();
  private boolean gone;

  WatchedOutput(OutputStream target) {
    this.target = target;
  }

  /** What went wrong; empty if nothing did, or if only the reader left. */
  Optional<String> trouble() {
    return trouble;
  }

  @Override
  public void write(byte[] bytes, int from, int count) {
    attempt(() -> target.write(bytes, from, count));
  }

  @Override
  public void write(int single) {
    attempt(() -> target.write(single));
  }

  @Override
  public void flush() {
    attempt(target::flush);
  }

  private void attempt(Attempt attempt) {
    if (gone) {
      return;
    }
    try {
      attempt.run();
    } catch (IOException e) {
      gone = true;
      String says = String.valueOf(e.getMessage());
      boolean readerLeft = says.toLowerCase(Locale.ROOT).contains("pipe");
      trouble = readerLeft ? Optional.empty() : Optional.of(says);
    }
  }

  private interface Attempt {
    void run() throws IOException;
  }
}
