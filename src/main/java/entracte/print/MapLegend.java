package entracte.print;

import entracte.cue.Touch.Act;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The words to the shapes: each that is in the picture, and only those, with an example. What the
 * numbers stand for is in the list of steps.
 */
final class MapLegend {
  private static final double GAP = 0.5;
  private static final double BETWEEN = 1.5;

  private final Lettering lettering;
  private final Stamps stamps;
  private final double capital;
  private final double width;

  /**
   * @param width of the paper, in mm
   */
  MapLegend(Lettering lettering, Stamps stamps, double capital, double width) {
    this.lettering = lettering;
    this.stamps = stamps;
    this.capital = capital;
    this.width = width;
  }

  private static String words(Act act) {
    return switch (act) {
      case PULL -> "pull out";
      case PLUG -> "plug in";
      case TURN -> "turn: thin old, thick new";
      case SWITCH -> "switch: ring old, black new";
      case TUNE -> "tune";
    };
  }

  /**
   * As many entries to a line as have room; a piece that may be parted between its lines.
   *
   * @param explained shapes that need no words any more
   */
  Slab of(List<Place> places, Set<Act> explained) {
    Map<Act, Place> examples = new EnumMap<>(Act.class);
    places.stream()
        .filter(place -> !explained.contains(place.touch().act()))
        .forEach(place -> examples.merge(place.touch().act(), place, this::lower));
    if (examples.isEmpty()) {
      return Slab.empty(0);
    }
    List<Rows.Piece> entries = new ArrayList<>();
    examples.forEach((act, place) -> entries.add(entry(place, words(act))));
    List<Slab> lines = new ArrayList<>(List.of(Slab.empty(GAP * capital)));
    lines.addAll(Rows.of(entries, width, BETWEEN * capital));
    return Slab.joined(lines);
  }

  private Rows.Piece entry(Place place, String words) {
    double left = stamps.width(place) + GAP * capital;
    List<String> lines = lettering.wrap(words, Face.PLAIN, capital, width - left, 0);
    double text = lines.size() * lettering.lineHeight(capital);
    double stamp = stamps.height(place);
    double top = Math.max(0, (stamp - text) / 2);
    List<Mark> marks = new ArrayList<>(stamps.draw(place, 0, 0));
    marks.addAll(lettering.block(lines, Face.PLAIN, left, top, capital, 0));
    double right = marks.stream().mapToDouble(Mark::right).max().orElse(0);
    return new Rows.Piece(right, Slab.of(Math.max(text, stamp) + GAP * capital, marks));
  }

  private Place lower(Place one, Place other) {
    return stamps.height(other) < stamps.height(one) ? other : one;
  }
}
