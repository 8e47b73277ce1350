package entracte.cli;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

/**
 * Puts the name of the set and the sum over a PNG into the PNG, as a remark in front of its last
 * chunk, where the standard allows text and programs that show the picture skip it (W3C, PNG, third
 * edition, 11.3.3.4 iTXt: text in UTF-8).
 */
final class PngSeal {
  private static final String NAME = "iTXt";

  /** Keyword, not compressed, in no language, not translated. */
  private static final String HEAD = "Comment\0\0\0\0\0";

  private static final Pattern SAYS =
      Pattern.compile(NAME + HEAD + "Written by entracte for (.*); sum [0-9a-f]{8}");

  /** Length, name and check of a chunk that holds nothing: the last one. */
  private static final int END_BYTES = 12;

  private static final int FRAME_BYTES = 12;
  private static final int LENGTH_BYTES = 4;

  private PngSeal() {}

  /** The picture with a remark that ends with the sum over the picture without it. */
  static byte[] signed(byte[] png, String set) {
    byte[] chunk = chunk(SheetFile.says(set, SheetFile.sum(png, png.length)));
    int before = png.length - END_BYTES;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(png, 0, before);
    out.writeBytes(chunk);
    out.write(png, before, END_BYTES);
    return out.toByteArray();
  }

  /** The set that the remark names; empty if there is no remark, or if its sum is wrong. */
  static Optional<String> set(byte[] all) {
    int at = lastRemark(all);
    if (at < 0) {
      return Optional.empty();
    }
    int end = all.length - END_BYTES - (FRAME_BYTES - LENGTH_BYTES - NAME.length());
    Matcher says = SAYS.matcher(new String(all, at, Math.max(0, end - at), StandardCharsets.UTF_8));
    if (!says.matches()) {
      return Optional.empty();
    }
    byte[] bare = Arrays.copyOf(all, at - LENGTH_BYTES + END_BYTES);
    System.arraycopy(all, all.length - END_BYTES, bare, at - LENGTH_BYTES, END_BYTES);
    String set = says.group(1);
    return Arrays.equals(all, signed(bare, set)) ? Optional.of(set) : Optional.empty();
  }

  /** Where the name of the last remark stands, or -1. */
  private static int lastRemark(byte[] all) {
    byte[] name = NAME.getBytes(StandardCharsets.US_ASCII);
    for (int at = all.length - name.length; at >= LENGTH_BYTES; at--) {
      if (Arrays.equals(all, at, at + name.length, name, 0, name.length)) {
        return at;
      }
    }
    return -1;
  }

  private static byte[] chunk(String says) {
    byte[] text = (HEAD + says).getBytes(StandardCharsets.UTF_8);
    byte[] name = NAME.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(name);
    check.update(text);
    ByteBuffer chunk = ByteBuffer.allocate(text.length + FRAME_BYTES);
    chunk.putInt(text.length).put(name).put(text).putInt((int) check.getValue());
    return chunk.array();
  }
}
