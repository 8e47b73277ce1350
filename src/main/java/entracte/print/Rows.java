package entracte.print;

import java.util.ArrayList;
import java.util.List;

/** Pieces beside each other, in as many rows as they need. */
final class Rows {
  /** A little more than the sums of many widths can be wrong by. */
  private static final double ROUNDING = 1e-6;

  /**
   * Something drawn from its own top left corner.
   *
   * @param width what it takes of the row, in mm
   */
  record Piece(double width, Slab slab) {}

  private Rows() {}

  /**
   * @param width of a row, in mm; a piece that is wider stands alone
   * @param between what is left free between two pieces
   */
  static List<Slab> of(List<Piece> pieces, double width, double between) {
    List<Slab> rows = new ArrayList<>();
    List<Mark> marks = new ArrayList<>();
    double x = 0;
    double height = 0;
    for (Piece piece : pieces) {
      if (x > 0 && x + piece.width() > width + ROUNDING) {
        rows.add(Slab.of(height, marks));
        marks.clear();
        x = 0;
        height = 0;
      }
      for (Mark mark : piece.slab().marks()) {
        marks.add(mark.shifted(x, 0));
      }
      x += piece.width() + between;
      height = Math.max(height, piece.slab().height());
    }
    if (!pieces.isEmpty()) {
      rows.add(Slab.of(height, marks));
    }
    return rows;
  }
}
