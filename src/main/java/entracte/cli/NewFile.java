package entracte.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
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

  static void write(Path file, String text) {
    try {
      Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
    } catch (IOException e) {
      throw Stop.unwritable(file, e);
    }
  }
}
