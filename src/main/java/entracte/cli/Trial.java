package entracte.cli;

import java.util.Locale;

/**
 * What was tried for the stage, and how it went.
 *
 * @param what was tried, in a word or two
 * @param says how it is
 * @param advice what to do; empty if nothing
 */
record Trial(Verdict verdict, String what, String says, String advice) {
  /** In words, since colours do not show on every screen and to every eye. */
  enum Verdict {
    READY(32),
    /** The computer cannot tell; eyes can. */
    LOOK(33),
    NOT_READY(31);

    private final int colour;

    Verdict(int colour) {
      this.colour = colour;
    }

    /** Green, yellow or red, by its number in ECMA-48. */
    int colour() {
      return colour;
    }

    String word() {
      return this == NOT_READY ? "NOT READY" : name().toLowerCase(Locale.ROOT);
    }
  }

  static Trial ready(String what, String says) {
    return new Trial(Verdict.READY, what, says, "");
  }

  static Trial look(String what, String says, String advice) {
    return new Trial(Verdict.LOOK, what, says, advice);
  }

  static Trial notReady(String what, String says, String advice) {
    return new Trial(Verdict.NOT_READY, what, says, advice);
  }
}
