package entracte.cli;

import entracte.rehearsal.Clock;
import entracte.rig.FootSwitch;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What comes in from outside while a command runs: what is typed, the time, what is saved, and what
 * the computer tells of itself.
 *
 * @param lines whatever is typed; a pedal that acts as a keyboard types, too
 * @param clock the time
 * @param terminal whether it is typed in a terminal, whose keys can be had one by one
 * @param saves what an editor saves
 * @param computer asks the computer of itself; that takes a while, and few commands want it
 */
record Hearing(
    BufferedReader lines, Clock clock, boolean terminal, Saves saves, Supplier<Venue> computer) {
  /** Standard input, the machine's clock and its files. */
  static Hearing real() {
    Reader in = new InputStreamReader(System.in, StandardCharsets.UTF_8);
    return new Hearing(
        new BufferedReader(in), Clock.real(), System.console() != null, Saves.real(), Venue::real);
  }

  /** The computer as it is now. */
  Venue venue() {
    return computer.get();
  }

  /** How long a line may be: as wide as a narrow terminal, and never longer than on paper. */
  int width() {
    return venue().window().map(window -> KeyTalk.width(window.width())).orElse(PlanText.WIDTH);
  }

  /** A conversation; by keys and foot where there is a terminal, else by lines. */
  Talk with(Streams streams, Optional<FootSwitch> pedal) {
    if (terminal) {
      KeyTalk talk = new KeyTalk(streams, clock.now());
      try {
        talk.listen(pedal);
        return talk;
      } catch (IOException keysOnly) {
        talk.close();
      }
    }
    return new LineTalk(streams, lines, terminal);
  }
}
