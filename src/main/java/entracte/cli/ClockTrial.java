package entracte.cli;

import entracte.read.SetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** Whether the clock may be right. What was written before now cannot be from tomorrow. */
final class ClockTrial {
  private static final DateTimeFormatter SHOWN =
      DateTimeFormatter.ofPattern("H:mm 'on' EEEE d MMMM yyyy", Locale.ENGLISH);

  /** Another computer on the same drive may be a little ahead. */
  private static final Duration AHEAD = Duration.ofMinutes(2);

  private ClockTrial() {}

  static Trial of(InstantSource clock, ZoneId zone, Path set) {
    Instant now = clock.instant();
    String says = "It is " + SHOWN.format(now.atZone(zone)) + " (" + zone + ")";
    Optional<Path> later =
        SetReader.read(set).files().stream()
            .filter(file -> changed(file).isAfter(now.plus(AHEAD)))
            .findFirst();
    if (later.isPresent()) {
      return Trial.notReady(
          "clock",
          says + ", and " + later.get() + " was saved later than that.",
          "Set the computer's clock; the stage shows it, and the times of the night go by it.");
    }
    return Trial.look("clock", says + ", says the computer.", "Look whether it is right.");
  }

  private static Instant changed(Path file) {
    try {
      return Files.getLastModifiedTime(file).toInstant();
    } catch (IOException gone) {
      return Instant.MIN;
    }
  }
}
