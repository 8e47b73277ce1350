package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Figures of the whole program on a bare pseudo-terminal of 200x60, which util-linux's {@code
 * script} makes; {@code src/docs/stage.md} tells of them.
 */
@Tag("benchmark")
final class PtyFiguresTest {
  private static final int KEYS = 300;
  private static final int STARTS = 20;

  /** After so long without output a picture is whole. */
  private static final long QUIET_MILLIS = 30;

  /** Next, next and next, each by another key, and three times undo. */
  private static final String[] SAID = {"\033[6~", "\r", "\033[B", "\033OS", "\033OS", "\033OS"};

  @TempDir Path folder;

  private record Chunk(long atNanos, String text) {}

  private final class Pty implements AutoCloseable {
    private final Process process;
    private final BlockingQueue<Chunk> chunks = new LinkedBlockingQueue<>();
    private final long startedNanos = System.nanoTime();

    Pty() throws IOException {
      String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
      String command =
          "stty rows 60 cols 200; exec %s -cp '%s' entracte.cli.Main stage '%s'"
              .formatted(java, System.getProperty("java.class.path"), folder.resolve("set"));
      process =
          new ProcessBuilder("script", "-qfec", command, "/dev/null")
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      Thread reader = new Thread(this::read, "reads the terminal");
      reader.setDaemon(true);
      reader.start();
    }

    private void read() {
      byte[] buffer = new byte[1 << 16];
      try (InputStream from = process.getInputStream()) {
        for (int count = from.read(buffer); count >= 0; count = from.read(buffer)) {
          chunks.add(
              new Chunk(System.nanoTime(), new String(buffer, 0, count, StandardCharsets.UTF_8)));
        }
      } catch (IOException ended) {
        // The program is gone.
      }
    }

    /** When the first text came that holds {@code text}. */
    long await(String text) throws InterruptedException {
      StringBuilder all = new StringBuilder();
      while (true) {
        Chunk chunk = chunks.poll(60, TimeUnit.SECONDS);
        assertTrue(chunk != null, "it never came: " + text);
        if (all.append(chunk.text()).indexOf(text) >= 0) {
          return chunk.atNanos();
        }
      }
    }

    /** When the picture that comes next was whole. */
    long settled() throws InterruptedException {
      Chunk last = chunks.poll(10, TimeUnit.SECONDS);
      assertTrue(last != null, "nothing came of a key");
      for (Chunk next = last; next != null; ) {
        last = next;
        next = chunks.poll(QUIET_MILLIS, TimeUnit.MILLISECONDS);
      }
      return last.atNanos();
    }

    void type(String keys) throws IOException {
      OutputStream to = process.getOutputStream();
      to.write(keys.getBytes(StandardCharsets.US_ASCII));
      to.flush();
    }

    @Override
    public void close() throws Exception {
      type("\003");
      process.waitFor(10, TimeUnit.SECONDS);
      process.destroyForcibly();
    }
  }

  private void copySet() throws IOException {
    Path from = Path.of("sets/kitchen-table");
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.toList()) {
        Files.copy(file, folder.resolve("set").resolve(from.relativize(file).toString()));
      }
    }
  }

  @Test
  void fromTheKeyToTheChangedScreen() throws Exception {
    copySet();
    long[] took = new long[KEYS];
    try (Pty pty = new Pty()) {
      pty.await("PLUG");
      for (int key = -30; key < KEYS; key++) {
        while (pty.chunks.poll(QUIET_MILLIS, TimeUnit.MILLISECONDS) != null) {
          // A clock that ticks is no answer to a key.
        }
        long begun = System.nanoTime();
        pty.type(SAID[Math.floorMod(key, SAID.length)]);
        long end = pty.settled();
        if (key >= 0) {
          took[key] = end - begun;
        }
      }
    }
    StageFiguresTest.tell("key to whole changed screen at 200x60, " + KEYS + " keys", took);
  }

  @Test
  void fromTheStartToTheFirstFrame() throws Exception {
    copySet();
    long[] took = new long[STARTS];
    for (int start = 0; start < STARTS; start++) {
      try (Pty pty = new Pty()) {
        took[start] = pty.await("next: ") - pty.startedNanos;
      }
    }
    StageFiguresTest.tell("start of the program to its first frame, " + STARTS + " starts", took);
  }
}
