package entracte.cli;

import entracte.plan.Planner;
import entracte.rehearsal.Clock;
import entracte.terminal.Window;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;

/** Types commands and reads what comes back, as one who sits at no terminal. */
final class Typist {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final Planning planning;
  private String lines = "";
  private Venue venue =
      new Venue(
          Path.of("no", "such", "folder"),
          Map.of("LANG", "en_GB.UTF-8"),
          Optional.of(new Window(80, 24)),
          ZoneOffset.UTC,
          seconds -> Optional.empty(),
          0.1);
  private Saves saves = (files, before) -> false;

  Typist() {
    this(Planner::plan);
  }

  Typist(Planning planning) {
    this.planning = planning;
  }

  /** The exit code of the command, whose output replaces that of the one before. */
  int type(String... words) {
    out.reset();
    err.reset();
    return new Program(new Streams(out, err, false, false), planning, hearing()).run(words);
  }

  /** What the next command will hear. */
  Typist hearing(String newLines) {
    lines = newLines;
    return this;
  }

  /** What the computer is like. */
  Typist at(Venue newVenue) {
    venue = newVenue;
    return this;
  }

  Venue venue() {
    return venue;
  }

  /** Who edits the files while a command waits for that. */
  Typist saving(Saves newSaves) {
    saves = newSaves;
    return this;
  }

  /** Every look at the clock finds it one second on. */
  private Hearing hearing() {
    AtomicLong seconds = new AtomicLong();
    Instant begin = Instant.parse("2026-03-01T19:00:00Z");
    return new Hearing(
        new BufferedReader(new StringReader(lines)),
        new Clock(
            () -> begin.plusSeconds(seconds.incrementAndGet()),
            () -> 1_000_000_000L * seconds.incrementAndGet()),
        false,
        saves,
        () -> venue);
  }

  String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
