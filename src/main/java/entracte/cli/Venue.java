package entracte.cli;

import entracte.terminal.Key;
import entracte.terminal.Keyboard;
import entracte.terminal.Window;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * The computer that stands on the stage, as far as it tells of itself.
 *
 * @param powers the folder in which the system tells of batteries and mains; it may not be there
 * @param window the size of the terminal; empty if there is none
 * @param footSeconds how long a foot has time to find the pedal
 */
record Venue(
    Path powers,
    Map<String, String> environment,
    Optional<Window> window,
    ZoneId zone,
    Keys keys,
    double footSeconds) {
  private static final double USUAL_FOOT_SECONDS = 15;

  /** Waits for a key of the terminal. */
  interface Keys {
    Optional<Key> within(double seconds) throws IOException, InterruptedException;
  }

  static Venue real() {
    return new Venue(
        Path.of("/sys/class/power_supply"),
        System.getenv(),
        System.console() == null ? Optional.empty() : Window.now(),
        ZoneId.systemDefault(),
        Venue::key,
        USUAL_FOOT_SECONDS);
  }

  private static Optional<Key> key(double seconds) throws IOException, InterruptedException {
    BlockingQueue<Key> heard = new LinkedBlockingQueue<>();
    try (Keyboard keyboard = Keyboard.open(heard::add)) {
      long nanos = Math.round(seconds * TimeUnit.SECONDS.toNanos(1));
      return Optional.ofNullable(heard.poll(nanos, TimeUnit.NANOSECONDS));
    }
  }
}
