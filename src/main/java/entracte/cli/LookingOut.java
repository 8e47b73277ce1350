package entracte.cli;

import java.nio.file.Path;
import java.util.List;

/**
 * Looks at files again and again. The system could tell of changes by itself, but not on every kind
 * of drive, and on some systems only seconds later.
 */
final class LookingOut implements Saves {
  static final long PAUSE_MILLIS = 250;

  private final Pause pause;

  /** What passes between two looks. */
  interface Pause {
    void pass() throws InterruptedException;
  }

  LookingOut(Pause pause) {
    this.pause = pause;
  }

  /** Waits for a change, and then for two looks that are alike: the editor has done. */
  @Override
  public boolean await(List<Path> files, FileLooks before) throws InterruptedException {
    FileLooks last = before;
    FileLooks now = FileLooks.of(files);
    while (now.equals(before) || !now.equals(last)) {
      pause.pass();
      last = now;
      now = FileLooks.of(files);
    }
    return true;
  }
}
