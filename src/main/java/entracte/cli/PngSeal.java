package entracte.cli;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;

/**
 * Puts the sum over a PNG into the PNG, as a remark in front of its last chunk, where the standard
 * allows text and programs that show the picture skip it (W3C, PNG, third edition, 11.3.3.2 tEXt).
 */
final class PngSeal {
  private static final String KEYWORD = "Comment\0";

  /** Length, name and check of a chunk that holds nothing: the last one. */
  private static final int END_BYTES = 12;

  private static final int FRAME_BYTES = 12;

  private PngSeal() {}

  /** The picture with a remark that ends with the sum over the picture without it. */
  static byte[] signed(byte[] png) {
    byte[] chunk = chunk(SheetFile.sum(png, png.length));
    int before = png.length - END_BYTES;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(png, 0, before);
    out.writeBytes(chunk);
    out.write(png, before, END_BYTES);
    return out.toByteArray();
  }

  /** Whether that remark is there and its sum is right. */
  static boolean isSigned(byte[] all) {
    int chunk = chunk("00000000").length;
    int before = all.length - END_BYTES - chunk;
    if (before < 0) {
      return false;
    }
    byte[] bare = Arrays.copyOf(all, all.length - chunk);
    System.arraycopy(all, before + chunk, bare, before, END_BYTES);
    return Arrays.equals(all, signed(bare));
  }

  private static byte[] chunk(String sum) {
    byte[] text = (KEYWORD + SheetFile.SAYS + sum).getBytes(StandardCharsets.ISO_8859_1);
    byte[] name = "tEXt".getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(name);
    check.update(text);
    ByteBuffer chunk = ByteBuffer.allocate(text.length + FRAME_BYTES);
    chunk.putInt(text.length).put(name).put(text).putInt((int) check.getValue());
    return chunk.array();
  }
}
