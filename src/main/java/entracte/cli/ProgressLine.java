package entracte.cli;

import entracte.plan.Options;
import java.util.Locale;

/** One line on standard error that tells how a long search is doing, and is gone at its end. */
final class ProgressLine {
  private static final double QUIET_SECONDS = 0.5;
  private static final String CLEAR = "\r\u001B[K";

  private final Streams streams;
  private double shownAt;
  private String shown = "";

  ProgressLine(Streams streams) {
    this.streams = streams;
  }

  void show(Options.Progress progress) {
    if (progress.seconds() - shownAt >= QUIET_SECONDS) {
      shownAt = progress.seconds();
      String text =
          String.format(
              Locale.ROOT,
              "best so far %s, at least %d, %.0f s",
              Totals.moves(progress.moves()),
              progress.lowerBound(),
              progress.seconds());
      say(text);
    }
  }

  /** Shows a text in place of the one before; from any thread. */
  synchronized void say(String text) {
    streams.err().print(cleared() + text);
    streams.err().flush();
    shown = text;
  }

  /** Takes it away; another search may follow. */
  synchronized void clear() {
    shownAt = 0;
    if (!shown.isEmpty()) {
      streams.err().print(cleared());
      streams.err().flush();
      shown = "";
    }
  }

  /** Who wants no colour, or has a terminal without any, gets blanks and no escape sequence. */
  private String cleared() {
    return streams.colour() ? CLEAR : "\r" + " ".repeat(shown.length()) + "\r";
  }
}
