package entracte.print;

import entracte.cue.Touch.Act;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

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

  /** As many entries to a line as have room; a piece that may be parted between its lines. */
  Slab of(List<Place> places) {
    Map<Act, Place> examples = new EnumMap<>(Act.class);
    places.forEach(place -> examples.putIfAbsent(place.touch().act(), place));
    List<Slab> lines = new ArrayList<>(List.of(Slab.empty(GAP * capital)));
    List<Slab> line = new ArrayList<>();
    double used = 0;
    for (Map.Entry<Act, Place> each : examples.entrySet()) {
      Slab entry = entry(each.getValue(), words(each.getKey()));
      if (!line.isEmpty() && used + width(entry) > width) {
        lines.add(beside(line));
        line.clear();
        used = 0;
      }
      line.add(entry);
      used += width(entry) + BETWEEN * capital;
    }
    lines.add(beside(line));
    return Slab.joined(lines);
  }

  private Slab beside(List<Slab> entries) {
    List<Mark> marks = new ArrayList<>();
    double x = 0;
    for (Slab entry : entries) {
      for (Mark mark : entry.marks()) {
        marks.add(mark.shifted(x, 0));
      }
      x += width(entry) + BETWEEN * capital;
    }
    double height = entries.stream().mapToDouble(Slab::height).max().orElse(0);
    return Slab.of(height, marks);
  }

  private Slab entry(Place place, String words) {
    double left = stamps.width(place) + GAP * capital;
    List<String> lines = lettering.wrap(words, Face.PLAIN, capital, width - left, 0);
    double text = lines.size() * lettering.lineHeight(capital);
    double top = Math.max(0, (stamps.height() - text) / 2);
    List<Mark> marks = new ArrayList<>(stamps.draw(place, 0, 0));
    marks.addAll(lettering.block(lines, Face.PLAIN, left, top, capital, 0));
    return Slab.of(Math.max(text, stamps.height()) + GAP * capital, marks);
  }

  private static double width(Slab entry) {
    return entry.marks().stream().mapToDouble(Mark::right).max().orElse(0);
  }
}
