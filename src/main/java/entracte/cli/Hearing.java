package entracte.cli;

import entracte.rehearsal.Clock;
import entracte.rehearsal.Dialogue;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * What comes in from outside while a command runs: lines that are typed, and the time.
 *
 * @param lines whatever is typed; a pedal that acts as a keyboard types, too
 */
record Hearing(BufferedReader lines, Clock clock) {
  /** Standard input and the machine's clock. */
  static Hearing real() {
    Reader in = new InputStreamReader(System.in, StandardCharsets.UTF_8);
    return new Hearing(new BufferedReader(in), Clock.real());
  }

  /** A conversation: what is said goes to standard output at once. */
  Dialogue with(Streams streams) {
    return new Dialogue() {
      @Override
      public void say(String line) {
        streams.line(line);
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
    };
  }
}
