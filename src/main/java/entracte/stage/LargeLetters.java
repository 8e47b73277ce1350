package entracte.stage;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Letters several rows high, to be read from two metres. A cell holds two dots, one above the
 * other, drawn as half blocks.
 */
final class LargeLetters {
  private static final String[] HALVES = {" ", "\u2580", "\u2584", "\u2588"};

  /** Each size of letters, the largest first; read when the first are drawn. */
  private static final List<LetterTable> SIZES =
      List.of(LetterTable.load("letters-12.txt"), LetterTable.load("letters-7.txt"));

  private LargeLetters() {}

  /**
   * The text in the largest letters in which it fits, on as many lines as it takes; empty if it
   * fits in none, or if a character has no large form.
   */
  static Optional<List<String>> draw(String text, int cells, int rows) {
    String whole = Normalizer.normalize(text, Normalizer.Form.NFC);
    for (LetterTable size : SIZES) {
      if (whole.codePoints().allMatch(point -> size.letter(point).isPresent())) {
        Optional<List<String>> lines = lines(whole, size, cells);
        if (lines.isPresent() && lines.get().size() * rowsOf(size) <= rows) {
          return Optional.of(
              lines.get().stream().flatMap(line -> paint(line, size).stream()).toList());
        }
      }
    }
    return Optional.empty();
  }

  /** Whether every character of the text has a large form. */
  static boolean has(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .allMatch(point -> SIZES.stream().anyMatch(size -> size.letter(point).isPresent()));
  }

  private static int rowsOf(LetterTable size) {
    return (size.rows() + 1) / 2;
  }

  private static int width(String text, LetterTable size) {
    return text.codePoints().map(point -> size.letter(point).orElseThrow().width()).sum();
  }

  /** Broken at blanks; empty if a word alone is too wide. */
  private static Optional<List<String>> lines(String text, LetterTable size, int cells) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split(" +")) {
      if (width(word, size) > cells) {
        return Optional.empty();
      }
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer, size) <= cells) {
        line = longer;
      } else {
        lines.add(line);
        line = word;
      }
    }
    lines.add(line);
    return Optional.of(lines);
  }

  private static List<String> paint(String line, LetterTable size) {
    List<String> rows = new ArrayList<>();
    for (int y = 0; y < size.rows(); y += 2) {
      StringBuilder row = new StringBuilder();
      for (int point : line.codePoints().toArray()) {
        LetterTable.Letter letter = size.letter(point).orElseThrow();
        for (int x = 0; x < letter.width(); x++) {
          int upper = letter.isSet(x, y) ? 1 : 0;
          int lower = y + 1 < size.rows() && letter.isSet(x, y + 1) ? 2 : 0;
          row.append(HALVES[upper + lower]);
        }
      }
      rows.add(row.toString());
    }
    return rows;
  }
}
