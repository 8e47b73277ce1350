package entracte.print;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets stamps into the box of a module, in as many lines as they need. Worded ones have the name of
 * their jack or knob beside them, or below where the box is too narrow.
 */
final class MapCells {
  private static final double GAP = 0.35;
  private static final double BETWEEN = 0.5;
  private static final double AIR = 0.2;

  /** Below a name that stands below its stamp, so that it is not taken for the next one's. */
  private static final double NAME_AIR = 0.7;

  private final Lettering lettering;
  private final Stamps stamps;
  private final double capital;
  private final boolean worded;

  MapCells(Lettering lettering, Stamps stamps, double capital, boolean worded) {
    this.lettering = lettering;
    this.stamps = stamps;
    this.capital = capital;
    this.worded = worded;
  }

  /** A stamp with the lines of its name. */
  private record Cell(Place place, List<String> name, boolean below, double width, double height) {}

  /** The width of the narrowest room that cuts nothing. */
  double need(Place place) {
    double word =
        worded ? lettering.widestWord(place.name(), Face.PLAIN, capital) : stamps.width(place);
    return Math.max(stamps.width(place), word);
  }

  /** All stamps, from the top left corner of the room for them. */
  Slab set(List<Place> places, double width) {
    List<Slab> lines = new ArrayList<>();
    List<Cell> line = new ArrayList<>();
    double used = 0;
    for (Place place : places) {
      Cell cell = cell(place, width);
      if (!line.isEmpty() && used + cell.width() > width + 1e-6) {
        lines.add(beside(line));
        line = new ArrayList<>();
        used = 0;
      }
      line.add(cell);
      used += cell.width() + BETWEEN * capital;
    }
    if (!line.isEmpty()) {
      lines.add(beside(line));
    }
    return Slab.joined(lines);
  }

  private Cell cell(Place place, double width) {
    double stamp = stamps.width(place);
    String name = worded ? lettering.clean(place.name()) : "";
    if (name.isBlank()) {
      return new Cell(place, List.of(), false, stamp, stamps.height());
    }
    double whole = lettering.width(name, Face.PLAIN, capital);
    if (stamp + GAP * capital + whole <= width) {
      double both = stamp + GAP * capital + whole;
      return new Cell(place, List.of(name), false, both, stamps.height());
    }
    List<String> lines = lettering.wrap(name, Face.PLAIN, capital, width, 0);
    double height = stamps.height() + lines.size() * lettering.lineHeight(capital);
    return new Cell(place, lines, true, width, height);
  }

  private Slab beside(List<Cell> cells) {
    List<Mark> marks = new ArrayList<>();
    double x = 0;
    for (Cell cell : cells) {
      marks.addAll(stamps.draw(cell.place(), x, 0));
      double stamp = stamps.width(cell.place());
      double left = cell.below() ? x : x + stamp + GAP * capital;
      double middle = (stamps.height() + capital) / 2 - lettering.baseline(capital);
      double top = cell.below() ? stamps.height() : middle;
      marks.addAll(lettering.block(cell.name(), Face.PLAIN, left, top, capital, 0));
      x += cell.width() + BETWEEN * capital;
    }
    double height = cells.stream().mapToDouble(Cell::height).max().orElse(0);
    boolean below = cells.stream().anyMatch(Cell::below);
    return Slab.of(height + (below ? NAME_AIR : AIR) * capital, marks);
  }
}
