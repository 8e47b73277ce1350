package entracte.stage;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Letters of one size as dots, made beforehand from a font's outlines. The first line of a table
 * says how many rows of dots a letter has and how wide a blank is; each other line is a code point
 * in hexadecimal, its width, and one hexadecimal figure for each row, the leftmost dot highest.
 */
final class LetterTable {
  private final int rows;
  private final int blank;
  private final Map<Integer, Letter> letters = new HashMap<>();

  /**
   * @param width in dots
   * @param dots a figure for each row
   */
  record Letter(int width, int[] dots) {
    boolean isSet(int x, int y) {
      return (dots[y] >> (width - 1 - x) & 1) == 1;
    }
  }

  private LetterTable(BufferedReader in) throws IOException {
    String[] head = in.readLine().split(" ");
    rows = Integer.parseInt(head[1]);
    blank = Integer.parseInt(head[3]);
    for (String line = in.readLine(); line != null; line = in.readLine()) {
      String[] fields = line.split(" ");
      int[] dots = new int[rows];
      for (int row = 0; row < rows; row++) {
        dots[row] = Integer.parseInt(fields[row + 2], 16);
      }
      letters.put(Integer.parseInt(fields[0], 16), new Letter(Integer.parseInt(fields[1]), dots));
    }
    letters.put((int) ' ', new Letter(blank, new int[rows]));
  }

  static LetterTable load(String name) {
    try (InputStream in = LetterTable.class.getResourceAsStream(name);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return new LetterTable(reader);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Rows of dots. */
  int rows() {
    return rows;
  }

  /** The letter for a code point; empty if the font has none. */
  Optional<Letter> letter(int point) {
    return Optional.ofNullable(letters.get(point));
  }
}
