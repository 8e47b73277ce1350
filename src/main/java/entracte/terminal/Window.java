package entracte.terminal;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The size of a terminal's window, in cells. */
public record Window(int width, int height) {
  private static final Pattern ROWS_AND_COLUMNS = Pattern.compile("(\\d{1,5})\\s+(\\d{1,5})");

  /** Of the terminal that the program was started in; empty if nothing tells it. */
  public static Optional<Window> now() {
    try {
      Process asked =
          new ProcessBuilder("stty", "size").redirectInput(new File("/dev/tty")).start();
      return read(new String(asked.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException noSuchCommand) {
      return Optional.empty();
    }
  }

  static Optional<Window> read(String text) {
    Matcher size = ROWS_AND_COLUMNS.matcher(text.strip());
    return size.matches()
        ? Optional.of(new Window(Integer.parseInt(size.group(2)), Integer.parseInt(size.group(1))))
        : Optional.empty();
  }
}
