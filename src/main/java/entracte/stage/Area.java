package entracte.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Rows of a canvas that fill from the top. */
final class Area {
  /** Rows that only some letters reach down to; mostly they are empty and are left out. */
  private static final int TAILS = 2;

  private final Canvas canvas;
  private final int end;
  private int row;

  /** The rows from {@code from} to {@code end}, without the last. */
  Area(Canvas canvas, int from, int end) {
    this.canvas = canvas;
    this.row = from;
    this.end = end;
  }

  int width() {
    return canvas.width();
  }

  int left() {
    return Math.max(0, end - row);
  }

  void line(String text, Style style) {
    if (left() > 0) {
      canvas.put(0, row, Cells.cut(text, width()), style);
      row++;
    }
  }

  /** As many lines as the text takes. */
  void lines(String text, Style style) {
    Canvas.wrap(text, width()).forEach(line -> line(line, style));
  }

  /** A row in which several pieces stand. */
  void pieces(List<Piece> pieces) {
    if (left() > 0) {
      pieces.forEach(piece -> canvas.put(piece.x(), row, piece.text(), piece.style()));
      row++;
    }
  }

  /** A marked line that reaches from edge to edge. */
  void marked(String text) {
    if (left() > 0) {
      canvas.bar(row, Cells.cut(text, width()), Style.MARKED);
      row++;
    }
  }

  void blank() {
    if (left() > 0) {
      row++;
    }
  }

  /** Large letters, in at most half of the rows that are left; plain ones if they do not fit. */
  void large(String text) {
    large(text, left() / 2);
  }

  void large(String text, int rows) {
    Optional<List<String>> drawn = LargeLetters.draw(text, width(), rows);
    if (drawn.isPresent()) {
      drawn.get().forEach(each -> line(each, Style.LARGE));
    } else {
      lines(text, Style.STRONG);
    }
  }

  /**
   * A sentence in large letters; if it does not fit, in plain ones, with its gist in large ones.
   */
  void headline(String text, int rows) {
    if (LargeLetters.draw(text, width(), rows).isPresent()) {
      large(text, rows);
      return;
    }
    lines(text, Style.STRONG);
    for (List<String> gist : Headline.of(text)) {
      List<String> drawn = drawn(gist, rows);
      if (!drawn.isEmpty()) {
        drawn.forEach(each -> line(each, Style.LARGE));
        return;
      }
    }
  }

  /** Each line large, close below the other; empty if they do not fit. */
  private List<String> drawn(List<String> gist, int rows) {
    List<String> drawn = new ArrayList<>();
    for (String each : gist) {
      Optional<List<String>> part = LargeLetters.draw(each, width(), rows / gist.size() + TAILS);
      if (part.isEmpty()) {
        return List.of();
      }
      drawn.addAll(part.get().stream().filter(row -> !row.isBlank()).toList());
    }
    return drawn.size() <= rows ? drawn : List.of();
  }

  /** Text at a place of a row. */
  record Piece(int x, String text, Style style) {}
}
