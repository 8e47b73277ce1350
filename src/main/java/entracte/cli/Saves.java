package entracte.cli;

import java.nio.file.Path;
import java.util.List;

/** Waits for an editor; a test may put another in its place. */
interface Saves {
  /**
   * Waits until the files are no longer as they looked.
   *
   * @param before how they looked when they were read
   * @return whether there is anything to wait for any more
   */
  boolean await(List<Path> files, FileLooks before) throws InterruptedException;

  /** The machine's files, looked at a few times a second until the program is ended. */
  static Saves real() {
    return new LookingOut(() -> Thread.sleep(LookingOut.PAUSE_MILLIS));
  }
}
