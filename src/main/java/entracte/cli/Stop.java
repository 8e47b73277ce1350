package entracte.cli;

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
}
