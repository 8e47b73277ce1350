package entracte.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A mistake in this program, told in a line. The trace goes to a file, where it is of use to
 * whoever mends it, and never over the screen of a musician.
 */
final class Mishap {
  private Mishap() {}

  /** Tells of {@code problem} and gives the exit code for it. */
  static int report(Throwable problem, Streams streams) {
    streams.complain("entracte: the program failed: " + summary(problem));
    try {
      Path file = Files.createTempFile("entracte-report-", ".txt");
      Files.writeString(file, trace(problem), StandardCharsets.UTF_8);
      streams.complain("  This is a mistake in the program, not in your set. Report: " + file);
    } catch (IOException e) {
      streams.complain(
          "  This is a mistake in the program, not in your set. No report could be written.");
    }
    return ExitCode.BUG;
  }

  private static String summary(Throwable problem) {
    String name = problem.getClass().getSimpleName();
    String message = problem.getMessage();
    return message == null ? name : name + ", " + message.lines().findFirst().orElse("");
  }

  private static String trace(Throwable problem) {
    StringWriter text = new StringWriter();
    problem.printStackTrace(new PrintWriter(text, true));
    return "entracte " + RootCommand.VERSION + ", Java " + Runtime.version() + "\n" + text;
  }
}
