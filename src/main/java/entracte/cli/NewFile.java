package entracte.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes text into a file that was not there before; what is there stays as it is. */
final class NewFile {
  private NewFile() {}

  /** Stops the command if {@code file} cannot be a new file: before the work, not after it. */
  static void demandFree(Path file) {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw Stop.trouble(file + " is there already, so I leave it alone", "Give another name.");
    }
    Path folder = file.toAbsolutePath().getParent();
    if (!Files.isDirectory(folder)) {
      throw Stop.trouble("there is no folder " + folder, "Make it first.");
    }
  }

  /** What puts something into a file that is there. */
  interface Filling {
    void fill(Path file) throws IOException;
  }

  static void write(Path file, String text) {
    write(
        file,
        made ->
            Files.writeString(
                made, text, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING));
  }

  /** Leaves nothing behind where the disk is full: the half of a file would be in the way later. */
  static void write(Path file, Filling filling) {
    try {
      Files.createFile(file);
      try {
        filling.fill(file);
      } catch (IOException e) {
        Files.delete(file);
        throw e;
      }
    } catch (IOException e) {
      throw Stop.unwritable(file, e);
    }
  }
}
