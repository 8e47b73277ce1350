package entracte.finding;

import java.util.Objects;

/**
 * Where something is written: a file, a line and a column (both from 1, in code points), and the
 * text of that line, kept because the file may change before the finding is shown.
 */
public record Place(String file, int line, int column, String lineText) {
  public Place {
    Objects.requireNonNull(file);
    Objects.requireNonNull(lineText);
    if (line < 1 || column < 1) {
      throw new IllegalArgumentException("lines and columns count from 1: " + line + ":" + column);
    }
  }

  /** A place that is a whole file, such as one that cannot be opened. */
  public static Place wholeFile(String file) {
    return new Place(file, 1, 1, "");
  }

  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
