package entracte.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * Standard output and standard error, always UTF-8 and always with plain line feeds.
 *
 * <p>A reader that goes away ({@code entracte plan night | head}) is no trouble: the rest is thrown
 * away quietly. A full disk is.
 */
final class Streams {
  private static final int BUFFER = 1 << 16;

  private final WatchedOutput outTarget;
  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean colour;
  private final boolean progress;

  Streams(OutputStream out, OutputStream err, boolean colour, boolean progress) {
    this.outTarget = new WatchedOutput(out);
    this.out = writer(new BufferedOutputStream(outTarget, BUFFER));
    this.err = writer(err);
    this.colour = colour;
    this.progress = progress;
  }

  static Streams real() {
    boolean terminal = System.console() != null;
    return new Streams(
        new FileOutputStream(FileDescriptor.out),
        new FileOutputStream(FileDescriptor.err),
        terminal && mayColour(System.getenv()),
        terminal && errIsTerminal());
  }

  /** See no-color.org: any value that is not empty says no. */
  static boolean mayColour(Map<String, String> environment) {
    return environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !environment.getOrDefault("TERM", "").equals("dumb");
  }

  /** Java knows of standard input and output only; where the system tells more, ask it. */
  private static boolean errIsTerminal() {
    Path err = Path.of("/proc/self/fd/2");
    if (!Files.isSymbolicLink(err)) {
      return true;
    }
    try {
      String target = Files.readSymbolicLink(err).toString();
      return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
    } catch (IOException e) {
      return false;
    }
  }

  private static PrintWriter writer(OutputStream target) {
    return new PrintWriter(new OutputStreamWriter(target, StandardCharsets.UTF_8), false);
  }

  PrintWriter out() {
    return out;
  }

  PrintWriter err() {
    return err;
  }

  boolean colour() {
    return colour;
  }

  /** Whether somebody watches standard error. */
  boolean progress() {
    return progress;
  }

  /** Prints a line of a result. */
  void line(String text) {
    out.print(visible(text) + "\n");
  }

  /**
   * Prints a line of a result whose first word has a colour, if colours are shown; the word says
   * the same to those who see none.
   *
   * @param colour its number in ECMA-48, such as 31 for red
   */
  void line(String word, int colour, String rest) {
    String first =
        colour() ? "\u001B[" + colour + "m" + visible(word) + "\u001B[0m" : visible(word);
    out.print(first + visible(rest) + "\n");
  }

  /** Prints lines of a result that end themselves. */
  void text(String text) {
    out.print(visible(text));
  }

  /** Prints a line of trouble, after what was printed before. */
  void complain(String text) {
    out.flush();
    err.print(visible(text) + "\n");
    err.flush();
  }

  /** Ends the output; what went wrong with it, if anything did that matters. */
  Optional<String> close() {
    out.flush();
    err.flush();
    return outTarget.trouble();
  }

  /** A name out of a file must not steer the terminal. */
  private static String visible(String text) {
    return text.codePoints()
        .map(c -> Character.isISOControl(c) && c != '\n' && c != '\t' ? '?' : c)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }
}
