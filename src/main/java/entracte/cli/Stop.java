package entracte.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/**
 * Ends a command with a message for the musician: one line, and advice on a second if there is any.
 */
final class Stop extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final int exitCode;
  private final String advice;

  private Stop(int exitCode, String message, String advice) {
    super(message, null, false, false);
    this.exitCode = exitCode;
    this.advice = advice;
  }

  static Stop wrongUsage(String message, String advice) {
    return new Stop(ExitCode.WRONG_USAGE, message, advice);
  }

  static Stop trouble(String message, String advice) {
    return new Stop(ExitCode.TROUBLE, message, advice);
  }

  /**
   * A file could not be written; what the system says of it may name a file of ours beside it, and
   * that is kept to ourselves.
   */
  static Stop unwritable(Path file, IOException problem) {
    if (problem instanceof AccessDeniedException) {
      return trouble(
          file + " cannot be written: its folder may not be changed",
          "Look at the permissions of the folder, or write to another.");
    }
    String says = problem instanceof FileSystemException of ? of.getReason() : problem.getMessage();
    return trouble(
        file + " cannot be written" + (says == null ? "" : ": " + says),
        "Try another folder, or make room in this one.");
  }

  static Stop impossible(String message) {
    return new Stop(ExitCode.FINDINGS, message, "");
  }

  static Stop bug(String message, String advice) {
    return new Stop(ExitCode.BUG, message, advice);
  }

  int exitCode() {
    return exitCode;
  }

  String advice() {
    return advice;
  }

  /** Says what stopped the command. */
  void tell(Streams streams) {
    streams.complain("entracte: " + getMessage());
    if (!advice.isEmpty()) {
      streams.complain("  " + advice);
    }
  }
}
