package entracte.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

/**
 * Writes sheets so that nothing the user wrote is ever overwritten. The last line of a sheet holds
 * a sum over all that stands above it. Only a file whose sum is right is replaced: one of another
 * origin has none, and in one that was edited by hand it no longer fits. A PNG has a remark
 * instead. The new sheet is written beside the old one and put in its place when it is whole.
 */
final class SheetFile {
  /** Far more than any sheet; what is longer is somebody else's. */
  private static final long LARGEST_BYTES = 64L << 20;

  static final String SAYS = "Written by entracte; sum ";

  private static final Pattern LAST_LINE =
      Pattern.compile("(?:% |<!-- )?" + SAYS + "([0-9a-f]{8})(?: -->)?\n");

  /** How the last line is hidden from who reads the file. */
  enum Seal {
    TEXT("", ""),
    PDF("% ", ""),
    SVG("<!-- ", " -->");

    private final String before;
    private final String after;

    Seal(String before, String after) {
      this.before = before;
      this.after = after;
    }

    private String on(String sum) {
      return before + SAYS + sum + after + "\n";
    }
  }

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
    String text = String.join("\n", lines) + "\n\n";
    write(file, text.getBytes(StandardCharsets.UTF_8), Seal.TEXT);
  }

  /** Writes what ends with the end of a line, and the line with the sum. */
  static void write(Path file, byte[] content, Seal seal) {
    put(file, signed(content, seal));
  }

  /** Writes a picture that says within itself what its sum is. */
  static void writePng(Path file, byte[] png) {
    put(file, PngSeal.signed(png));
  }

  private static void put(Path file, byte[] content) {
    demandFree(file);
    Path folder = file.toAbsolutePath().getParent();
    if (!Files.isDirectory(folder)) {
      throw Stop.trouble("there is no folder " + folder, "Make it first.");
    }
    try {
      Path beside = folder.resolve("." + file.getFileName() + "." + pid() + ".part");
      try {
        Files.write(beside, content, StandardOpenOption.CREATE_NEW);
        Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException e) {
      throw Stop.unwritable(file, e);
    }
  }

  /** So that two runs at once do not write into each other's half. */
  private static long pid() {
    return ProcessHandle.current().pid();
  }

  private static byte[] signed(byte[] content, Seal seal) {
    byte[] last = seal.on(sum(content, content.length)).getBytes(StandardCharsets.US_ASCII);
    byte[] all = Arrays.copyOf(content, content.length + last.length);
    System.arraycopy(last, 0, all, content.length, last.length);
    return all;
  }

  private static boolean isOurs(Path file) {
    try {
      if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          || Files.size(file) > LARGEST_BYTES) {
        return false;
      }
      byte[] all = Files.readAllBytes(file);
      int last = lastLine(all);
      Matcher line =
          LAST_LINE.matcher(new String(all, last, all.length - last, StandardCharsets.ISO_8859_1));
      return line.matches() && sum(all, last).equals(line.group(1)) || PngSeal.isSigned(all);
    } catch (IOException e) {
      return false;
    }
  }

  /** Where the last line begins. */
  private static int lastLine(byte[] all) {
    int from = all.length - 1;
    while (from > 0 && all[from - 1] != '\n') {
      from--;
    }
    return Math.max(0, from);
  }

  static String sum(byte[] bytes, int length) {
    CRC32 crc = new CRC32();
    crc.update(bytes, 0, length);
    return String.format("%08x", crc.getValue());
  }
}
