package entracte.journal;

import entracte.stage.Event;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * The journal of one night: lines that are only ever added, each flushed to the disk. Where the
 * disk takes nothing more, the show goes on; what could not be written is tried again with the next
 * line.
 */
public final class JournalFile implements AutoCloseable {
  private final Optional<FileChannel> channel;
  private final String whyNot;
  private final JournalRead found;
  private final StringBuilder unwritten = new StringBuilder();
  private long goodLength;

  private JournalFile(Optional<FileChannel> channel, String whyNot, JournalRead found) {
    this.channel = channel;
    this.whyNot = whyNot;
    this.found = found;
    this.goodLength = found.goodLength();
  }

  /** Another stage has the journal open. */
  public static final class InUse extends IOException {
    private static final long serialVersionUID = 1;

    InUse(Path file) {
      super("another stage is open on " + file);
    }
  }

  /** Reads a journal to learn from it; one that is not there has no events. */
  public static JournalRead read(Path file) throws IOException {
    return Files.isRegularFile(file)
        ? JournalRead.of(Files.readAllBytes(file))
        : JournalRead.nothing();
  }

  /**
   * Takes a journal for itself, to add to it after the lines that are whole. It is read through the
   * channel that holds the lock: on Unix, closing any other one would give the lock away.
   *
   * @throws InUse if another stage has it
   */
  public static JournalFile open(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    try {
      if (channel.tryLock() == null) {
        throw new InUse(file);
      }
      ByteBuffer bytes = ByteBuffer.allocate((int) channel.size());
      while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
        // Read on until all is there.
      }
      flushFolder(file);
      return new JournalFile(Optional.of(channel), "", JournalRead.of(bytes.array()));
    } catch (OverlappingFileLockException here) {
      channel.close();
      throw new InUse(file);
    } catch (IOException problem) {
      channel.close();
      throw problem;
    }
  }

  /** A journal that keeps nothing, because {@code reason}; every line added says so. */
  public static JournalFile without(String reason, JournalRead found) {
    return new JournalFile(Optional.empty(), reason, found);
  }

  /** A new file outlives a power cut only if its folder has been flushed too. */
  private static void flushFolder(Path file) {
    try (FileChannel folder =
        FileChannel.open(file.toAbsolutePath().getParent(), StandardOpenOption.READ)) {
      folder.force(true);
    } catch (IOException notHere) {
      // Not every system flushes folders; the file's own lines are flushed all the same.
    }
  }

  /** What stood in it when it was opened. */
  public JournalRead found() {
    return found;
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
    FileChannel open = channel.orElseThrow(() -> new IOException(whyNot));
    unwritten.append(JournalRead.checksum(line)).append(' ').append(line).append('\n');
    byte[] bytes = unwritten.toString().getBytes(StandardCharsets.UTF_8);
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    open.truncate(goodLength); // drops half a line that an earlier failure left
    open.position(goodLength);
    while (buffer.hasRemaining()) {
      open.write(buffer);
    }
    open.force(false);
    goodLength += bytes.length;
    unwritten.setLength(0);
  }

  @Override
  public void close() throws IOException {
    if (channel.isPresent()) {
      channel.get().close();
    }
  }
}
