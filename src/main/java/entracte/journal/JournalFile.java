package entracte.journal;

import entracte.stage.Event;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * The journal of one night: lines that are only ever added, each flushed to the disk. Where the
 * disk takes nothing more, the show goes on; what could not be written is tried again with the next
 * line.
 */
public final class JournalFile implements AutoCloseable {
  /** A checksum of 8 digits and a blank before every line. */
  private static final int HEAD = 9;

  private final FileChannel channel;
  private final StringBuilder unwritten = new StringBuilder();
  private long goodLength;

  private JournalFile(FileChannel channel, long goodLength) {
    this.channel = channel;
    this.goodLength = goodLength;
  }

  /**
   * What a journal tells.
   *
   * @param events in their order
   * @param note what was wrong with the file, as a sentence; empty if nothing
   * @param goodLength how many bytes of it are whole lines
   */
  public record Read(List<Event> events, String note, long goodLength) {
    public Read {
      events = List.copyOf(events);
    }
  }

  /** Reads a journal; one that is not there has no events. */
  public static Read read(Path file) throws IOException {
    if (!Files.exists(file)) {
      return new Read(List.of(), "", 0);
    }
    byte[] bytes = Files.readAllBytes(file);
    List<Event> events = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        Optional<String> line = checked(new String(bytes, from, i - from, StandardCharsets.UTF_8));
        if (line.isEmpty()) {
          break;
        }
        EventText.read(line.get()).ifPresent(events::add);
        from = i + 1;
      }
    }
    String note =
        from == bytes.length
            ? ""
            : "The journal's end was torn; " + (bytes.length - from) + " bytes were dropped.";
    return new Read(events, note, from);
  }

  private static Optional<String> checked(String line) {
    if (line.length() < HEAD || !line.startsWith(checksum(line.substring(HEAD)) + " ")) {
      return Optional.empty();
    }
    return Optional.of(line.substring(HEAD));
  }

  private static String checksum(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return String.format("%08x", crc.getValue());
  }

  /** Opens a journal to add to it, after the lines that are whole. */
  public static JournalFile open(Path file, long goodLength) throws IOException {
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    if (channel.tryLock() == null) {
      channel.close();
      throw new IOException("another stage is open on " + file);
    }
    return new JournalFile(channel, goodLength);
  }

  /** Adds an event and flushes it to the disk; it is kept for later if that fails. */
  public void add(Event event) throws IOException {
    append(EventText.write(event));
  }

  /** Adds a line for readers, such as what was sent. */
  public void tell(long atMillis, String what, String text) throws IOException {
    append(new Fields.Out().add(atMillis).add(what).add(text).line());
  }

  private void append(String line) throws IOException {
    unwritten.append(checksum(line)).append(' ').append(line).append('\n');
    byte[] bytes = unwritten.toString().getBytes(StandardCharsets.UTF_8);
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    channel.truncate(goodLength); // drops half a line that an earlier failure left
    channel.position(goodLength);
    while (buffer.hasRemaining()) {
      channel.write(buffer);
    }
    channel.force(false);
    goodLength += bytes.length;
    unwritten.setLength(0);
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
