package entracte.journal;

import entracte.stage.Event;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * What a journal tells.
 *
 * @param events in their order
 * @param goodLength how many bytes of it are whole lines
 * @param dropped how many bytes behind them are not believed
 * @param damage what is wrong with the file
 */
public record JournalRead(List<Event> events, long goodLength, long dropped, Damage damage) {
  /** A checksum of 8 digits and a blank before every line. */
  private static final int HEAD = 9;

  /** What may be wrong with a journal. */
  public enum Damage {
    NONE,
    /** Its last line was torn, as by a power cut: that line was never finished. */
    TORN,
    /** A line in the middle is not as it was written; what stands behind it is lost to us. */
    SPOILT,
    /** It is no journal at all. */
    ALIEN
  }

  public JournalRead {
    events = List.copyOf(events);
  }

  /** Nothing was found. */
  public static JournalRead nothing() {
    return of(new byte[0]);
  }

  static JournalRead of(byte[] bytes) {
    List<Event> events = new ArrayList<>();
    int from = 0;
    boolean spoilt = false;
    for (int i = 0; i < bytes.length && !spoilt; i++) {
      if (bytes[i] == '\n') {
        Optional<String> line = checked(new String(bytes, from, i - from, StandardCharsets.UTF_8));
        line.flatMap(EventText::read).ifPresent(events::add);
        spoilt = line.isEmpty();
        from = spoilt ? from : i + 1;
      }
    }
    Damage damage =
        from == bytes.length
            ? Damage.NONE
            : from == 0 && !beginsLikeOurs(bytes)
                ? Damage.ALIEN
                : spoilt ? Damage.SPOILT : Damage.TORN;
    return new JournalRead(events, from, bytes.length - from, damage);
  }

  private static boolean beginsLikeOurs(byte[] bytes) {
    String head =
        new String(Arrays.copyOf(bytes, Math.min(HEAD, bytes.length)), StandardCharsets.ISO_8859_1);
    return head.matches("[0-9a-f]{0,8}|[0-9a-f]{8} ");
  }

  private static Optional<String> checked(String line) {
    if (line.length() < HEAD || !line.startsWith(checksum(line.substring(HEAD)) + " ")) {
      return Optional.empty();
    }
    return Optional.of(line.substring(HEAD));
  }

  static String checksum(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return String.format("%08x", crc.getValue());
  }
}
