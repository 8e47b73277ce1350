package entracte.cli;

/** How a command ends. */
final class ExitCode {
  static final int DONE = 0;

  /** The set has errors, or no plan exists. */
  static final int FINDINGS = 1;

  static final int WRONG_USAGE = 2;

  /** A file or a device cannot be used. */
  static final int TROUBLE = 3;

  /** A mistake in this program. */
  static final int BUG = 70;

  private ExitCode() {}
}
