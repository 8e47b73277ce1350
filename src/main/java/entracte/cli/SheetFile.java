package entracte.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

/**
 * Writes sheets so that nothing the user wrote is ever overwritten. The last line of a sheet holds
 * a sum over all that stands above it. Only a file whose sum is right is replaced: one of another
 * origin has none, and in one that was edited by hand it no longer fits. The new sheet is written
 * beside the old one and put in its place when it is whole.
 */
final class SheetFile {
  /** Far more than any sheet; what is longer is somebody else's. */
  private static final long LARGEST_BYTES = 4L << 20;

  private static final Pattern LAST_LINE =
      Pattern.compile("(?s)(.*\n)Written by entracte; sum ([0-9a-f]{8})\n");

  private SheetFile() {}

  /** Stops the command if {@code file} is something that must not be overwritten. */
  static void demandFree(Path file) {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isOurs(file)) {
      throw Stop.trouble(
          file + " is there already and is not an untouched sheet of mine, so I leave it alone",
          "Give another name, or move that file away yourself.");
    }
  }

  static void write(Path file, List<String> lines) {
    demandFree(file);
    Path folder = file.toAbsolutePath().getParent();
    if (!Files.isDirectory(folder)) {
      throw Stop.trouble("there is no folder " + folder, "Make it first.");
    }
    try {
      Path beside = folder.resolve("." + file.getFileName() + "." + pid() + ".part");
      try {
        Files.writeString(
            beside, signed(lines), StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
        Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException e) {
      throw Stop.trouble(file + " cannot be written: " + e.getMessage(), "");
    }
  }

  /** So that two runs at once do not write into each other's half. */
  private static long pid() {
    return ProcessHandle.current().pid();
  }

  static String signed(List<String> lines) {
    String text = String.join("\n", lines) + "\n\n";
    return text + "Written by entracte; sum " + sum(text) + "\n";
  }

  private static boolean isOurs(Path file) {
    try {
      if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          || Files.size(file) > LARGEST_BYTES) {
        return false;
      }
      Matcher last = LAST_LINE.matcher(Files.readString(file, StandardCharsets.UTF_8));
      return last.matches() && sum(last.group(1)).equals(last.group(2));
    } catch (IOException e) {
      return false;
    }
  }

  private static String sum(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return String.format("%08x", crc.getValue());
  }
}
