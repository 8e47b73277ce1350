package entracte.finding;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of a file as a terminal can show it, and the cell under which a caret goes. Tabs become
 * blanks, so that the caret stands right wherever the terminal has its tab stops; what would move
 * the cursor or turn the direction of writing becomes a question mark; a long line is cut around
 * the caret.
 *
 * @param caret cells before the caret
 */
record Excerpt(String text, int caret) {
  private static final int WIDTH = 72;

  /** How much of a cut line stands before the caret. */
  private static final int BEFORE = 48;

  private static final String CUT = "...";
  private static final String TAB = "    ";
  private static final int JOINER = 0x200D;

  /** What one character of the file looks like. */
  private record Cell(String text, int width) {}

  /** Only as much of a line is looked at as may be shown: lines can be very long. */
  static Excerpt of(String line, int column) {
    int length = line.codePointCount(0, line.length());
    int at = Math.min(column - 1, length);
    int from = Math.max(0, at - WIDTH);
    int to = Math.min(length, at + WIDTH);
    int start = line.offsetByCodePoints(0, from);
    List<Cell> cells = cells(line.substring(start, line.offsetByCodePoints(start, to - from)));
    int first = 0;
    int last = cells.size();
    if (from > 0 || to < length || width(cells, 0, last) > WIDTH) {
      first = at - from;
      while (first > 0 && width(cells, first - 1, at - from) <= BEFORE) {
        first--;
      }
      last = at - from;
      while (last < cells.size() && width(cells, first, last + 1) <= WIDTH) {
        last++;
      }
    }
    String head = from + first > 0 ? CUT : "";
    String tail = from + last < length ? CUT : "";
    return new Excerpt(
        (head + text(cells, first, last) + tail).stripTrailing(),
        head.length() + width(cells, first, at - from));
  }

  private static List<Cell> cells(String text) {
    List<Cell> cells = new ArrayList<>();
    text.codePoints().forEach(c -> cells.add(cell(c)));
    return cells;
  }

  private static Cell cell(int codePoint) {
    if (codePoint == '\t') {
      return new Cell(TAB, TAB.length());
    }
    int type = Character.getType(codePoint);
    boolean unsafe =
        type == Character.CONTROL
            || type == Character.SURROGATE
            || type == Character.LINE_SEPARATOR
            || type == Character.PARAGRAPH_SEPARATOR
            || (type == Character.FORMAT && codePoint != JOINER);
    return unsafe
        ? new Cell("?", 1)
        : new Cell(Character.toString(codePoint), CellWidth.of(codePoint));
  }

  private static int width(List<Cell> cells, int from, int to) {
    return cells.subList(from, to).stream().mapToInt(Cell::width).sum();
  }

  private static String text(List<Cell> cells, int from, int to) {
    StringBuilder text = new StringBuilder();
    cells.subList(from, to).forEach(cell -> text.append(cell.text()));
    return text.toString();
  }
}
