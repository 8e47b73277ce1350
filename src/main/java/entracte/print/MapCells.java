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

  /** The width of the narrowest room that cuts nothing. */
  double need(Place place) {
    double word =
        worded ? lettering.widestWord(place.name(), Face.PLAIN, capital) : stamps.width(place);
    return Math.max(stamps.width(place), word);
  }

  /** All stamps, from the top left corner of the room for them. */
  Slab set(List<Place> places, double width) {
    List<Rows.Piece> cells = places.stream().map(place -> cell(place, width)).toList();
    return Slab.joined(Rows.of(cells, width, BETWEEN * capital));
  }

  private Rows.Piece cell(Place place, double width) {
    double stamp = stamps.width(place);
    String name = worded ? lettering.clean(place.name()) : "";
    double whole = lettering.width(name, Face.PLAIN, capital);
    if (name.isBlank()) {
      return drawn(place, stamp, stamps.height(place) + AIR * capital, List.of());
    }
    double left = stamp + GAP * capital;
    if (left + whole <= width) {
      double middle = (stamps.height(place) + capital) / 2 - lettering.baseline(capital);
      List<Mark> beside = lettering.block(List.of(name), Face.PLAIN, left, middle, capital, 0);
      return drawn(place, left + whole, stamps.height(place) + AIR * capital, beside);
    }
    List<String> lines = lettering.wrap(name, Face.PLAIN, capital, width, 0);
    double stampHeight = stamps.height(place);
    double height = stampHeight + lines.size() * lettering.lineHeight(capital);
    List<Mark> below = lettering.block(lines, Face.PLAIN, 0, stampHeight, capital, 0);
    return drawn(place, width, height + NAME_AIR * capital, below);
  }

  /** A stamp with its name. */
  private Rows.Piece drawn(Place place, double width, double height, List<Mark> name) {
    List<Mark> marks = new ArrayList<>(stamps.draw(place, 0, 0));
    marks.addAll(name);
    return new Rows.Piece(width, Slab.of(height, marks));
  }
}
