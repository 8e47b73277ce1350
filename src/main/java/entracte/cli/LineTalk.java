package entracte.cli;

import entracte.print.Fill;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.stream.Stream;

/** A conversation line by line; what is said goes to standard output at once. */
final class LineTalk implements Talk {
  private final Streams streams;
  private final BufferedReader lines;
  private final boolean echoed;

  /**
   * @param echoed whether the answer will be seen behind its question; if not, the line ends there
   */
  LineTalk(Streams streams, BufferedReader lines, boolean echoed) {
    this.echoed = echoed;
    this.streams = streams;
    this.lines = lines;
  }

  @Override
  public void say(String line) {
    fill(streams, line);
  }

  /** Prints a line in as many as it takes; those that fit stay as they are, plots above all. */
  static void fill(Streams streams, String line) {
    fill(streams, line, PlanText.WIDTH);
  }

  static void fill(Streams streams, String line, int width) {
    filled(line, width).forEach(streams::line);
  }

  static Stream<String> filled(String line, int width) {
    if (Fill.width(line) <= width) {
      return Stream.of(line);
    }
    String indent = line.startsWith("  ") ? "  " : "";
    return Fill.lines(line.strip(), width, indent, indent + "  ").stream();
  }

  @Override
  public Optional<String> ask(String line) {
    streams.text(echoed ? line : line.stripTrailing() + "\n");
    streams.out().flush();
    try {
      return Optional.ofNullable(lines.readLine()).map(String::strip);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    // Nothing was taken.
  }
}
