package entracte.cli;

import entracte.stage.Screen;
import entracte.stage.Show;
import entracte.stage.ShowSong;
import entracte.terminal.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Whether the screen of the stage can be painted here, and in which letters. */
final class TerminalTrials {
  /** What the stage is laid out for; below the least it only says so. */
  private static final int GOOD_WIDTH = 80;

  private static final int GOOD_HEIGHT = 24;

  private TerminalTrials() {}

  static List<Trial> of(Venue venue, Show show) {
    return List.of(window(venue), alphabet(venue.environment()), titles(show));
  }

  private static Trial window(Venue venue) {
    if (venue.window().isEmpty()) {
      return Trial.notReady(
          "terminal",
          "There is none here that tells its size.",
          "Try again in the window that you will play from, with nothing redirected.");
    }
    Window window = venue.window().get();
    String size = "It has %d columns and %d rows".formatted(window.width(), window.height());
    if (window.width() < Screen.LEAST_WIDTH || window.height() < Screen.LEAST_HEIGHT) {
      return Trial.notReady(
          "terminal",
          size + "; the stage needs %d and %d.".formatted(Screen.LEAST_WIDTH, Screen.LEAST_HEIGHT),
          "Make the window larger, or its letters smaller.");
    }
    if (window.width() < GOOD_WIDTH || window.height() < GOOD_HEIGHT) {
      return Trial.look(
          "terminal",
          size + ", which is enough for small letters.",
          "For large ones give it %d and %d or more.".formatted(GOOD_WIDTH, GOOD_HEIGHT));
    }
    return Trial.ready("terminal", size + ".");
  }

  /** The first that is set decides, as POSIX has it for LC_ALL, LC_CTYPE and LANG. */
  private static Trial alphabet(Map<String, String> environment) {
    String named =
        Stream.of("LC_ALL", "LC_CTYPE", "LANG")
            .map(name -> environment.getOrDefault(name, ""))
            .filter(value -> !value.isEmpty())
            .findFirst()
            .orElse("");
    String plain = named.toLowerCase(Locale.ROOT).replace("-", "");
    if (plain.contains("utf8")) {
      return Trial.ready("letters", "The terminal is told to show UTF-8.");
    }
    return Trial.look(
        "letters",
        named.isEmpty()
            ? "Nothing tells whether the terminal shows UTF-8."
            : "The terminal is told to show " + named + ", not UTF-8.",
        "The three squares should stand full, upper half and lower half: \u2588 \u2580 \u2584. If"
            + " they do not, choose UTF-8 in the terminal's settings.");
  }

  private static Trial titles(Show show) {
    List<String> small = new ArrayList<>();
    for (ShowSong song : show.songs()) {
      if (!Screen.hasLargeLetters(song.title())) {
        small.add(song.title());
      }
    }
    return small.isEmpty()
        ? Trial.ready("titles", "Every title can be shown in large letters.")
        : Trial.look(
            "titles",
            "Only in small letters: " + String.join(", ", small) + ".",
            "Large letters are there for the Latin alphabet.");
  }
}
