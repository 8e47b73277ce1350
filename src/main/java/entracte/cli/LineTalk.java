package entracte.cli;

import entracte.print.Fill;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** A conversation line by line; what is said goes to standard output at once. */
final class LineTalk implements Talk {
  private final Streams streams;
  private final BufferedReader lines;

  LineTalk(Streams streams, BufferedReader lines) {
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
    if (Fill.width(line) <= width) {
      streams.line(line);
      return;
    }
    String indent = line.startsWith("  ") ? "  " : "";
    Fill.lines(line.strip(), width, indent, indent + "  ").forEach(streams::line);
  }

  @Override
  public Optional<String> ask(String line) {
    streams.text(line);
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
