package entracte.stage;

import entracte.cue.Spot;
import java.util.ArrayList;
import java.util.List;

/**
 * A small map of the rig: a row of dots for each row of modules, and where the hands go the
 * module's name.
 */
final class RigMap {
  private RigMap() {}

  static int rows(Show show) {
    return 1 + show.modules().stream().mapToInt(Spot::row).max().orElse(-1) + 1;
  }

  static void draw(Area body, Show show, Move move) {
    body.blank();
    double widest = show.modules().stream().mapToDouble(Spot::centreCm).max().orElse(1);
    for (int row = 0; row < rows(show) - 1; row++) {
      int thisRow = row;
      body.pieces(
          pieces(
              show.modules().stream().filter(spot -> spot.row() == thisRow).toList(),
              move,
              widest,
              body.width()));
    }
  }

  private static List<Area.Piece> pieces(List<Spot> modules, Move move, double widest, int width) {
    List<Area.Piece> dots = new ArrayList<>();
    List<Area.Piece> names = new ArrayList<>();
    for (Spot module : modules) {
      int x = (int) Math.round(module.centreCm() / widest * (width - 4));
      int turn = hand(module.module(), move);
      if (turn == 0) {
        dots.add(new Area.Piece(x, ".", Style.DIM));
      } else {
        String name = " " + turn + " " + module.module() + " ";
        int fits = Math.max(0, Math.min(x, width - Cells.of(name)));
        names.add(new Area.Piece(fits, name, Style.MARKED));
      }
    }
    dots.addAll(names);
    return dots;
  }

  /** Which of the move's places the module is, from 1; 0 if none. */
  private static int hand(String module, Move move) {
    for (int place = 0; place < move.reach().size(); place++) {
      if (move.reach().get(place).module().equals(module)) {
        return place + 1;
      }
    }
    return 0;
  }
}
