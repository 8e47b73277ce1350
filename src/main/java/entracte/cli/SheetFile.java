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
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

/**
 * Writes a sheet so that nothing the user wrote is ever overwritten. The last line of a sheet names
 * its set and holds a sum over all that stands above it. Only a file whose sum is right is
 * replaced: one of another origin has none, and in one that was edited by hand it no longer fits. A
 * sheet of another set is left alone, too. A PNG has a remark instead. The new sheet is written
 * beside the old one and put in its place when it is whole.
 *
 * @param set the name of the set
 */
record SheetFile(Path file, String set) {
  /** Far more than any sheet; what is longer is somebody else's. */
  private static final long LARGEST_BYTES = 64L << 20;

  /** An older sheet does not name its set. */
  private static final Pattern LAST_LINE =
      Pattern.compile(
          "(?:% |<!-- )?Written by entracte(?: for (?<set>.*))?"
              + "; sum (?<sum>[0-9a-f]{8})(?: -->)?\n");

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

    private String on(String says) {
      return before + says + after + "\n";
    }
  }

  SheetFile {
    // Nothing that would end the line or the remark in which it stands.
    set = set.replaceAll("[^\\p{L}\\p{M}\\p{N} ]", "_");
  }

  /** Stops the command if the file is something that must not be overwritten. */
  void demandFree() {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    String owner =
        owner()
            .orElseThrow(
                () ->
                    Stop.trouble(
                        file
                            + " is there already and is not an untouched sheet of mine,"
                            + " so I leave it alone",
                        "Give another name, or move that file away yourself."));
    if (!owner.isEmpty() && !owner.equals(set)) {
      throw Stop.trouble(
          file + " is the sheet of another set, " + owner + ", so I leave it alone",
          "Give another name, or move that file away yourself.");
    }
  }

  void write(List<String> lines) {
    String text = String.join("\n", lines) + "\n\n";
    write(text.getBytes(StandardCharsets.UTF_8), Seal.TEXT);
  }

  /** Writes what ends with the end of a line, and the line with the sum. */
  void write(byte[] content, Seal seal) {
    put(signed(content, seal));
  }

  /** Writes a picture that says within itself what its sum is. */
  void writePng(byte[] png) {
    put(PngSeal.signed(png, set));
  }

  /** What a sheet says of itself. */
  static String says(String set, String sum) {
    return "Written by entracte for " + set + "; sum " + sum;
  }

  private void put(byte[] content) {
    demandFree();
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

  private byte[] signed(byte[] content, Seal seal) {
    String says = seal.on(says(set, sum(content, content.length)));
    byte[] last = says.getBytes(StandardCharsets.UTF_8);
    byte[] all = Arrays.copyOf(content, content.length + last.length);
    System.arraycopy(last, 0, all, content.length, last.length);
    return all;
  }

  /** The set whose untouched sheet the file is, "" if it does not say; empty if it is none. */
  private Optional<String> owner() {
    try {
      if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          || Files.size(file) > LARGEST_BYTES) {
        return Optional.empty();
      }
      byte[] all = Files.readAllBytes(file);
      int last = lastLine(all);
      Matcher line =
          LAST_LINE.matcher(new String(all, last, all.length - last, StandardCharsets.UTF_8));
      return line.matches() && sum(all, last).equals(line.group("sum"))
          ? Optional.of(Objects.requireNonNullElse(line.group("set"), ""))
          : PngSeal.set(all);
    } catch (IOException e) {
      return Optional.empty();
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
