package entracte.print;

import entracte.cue.CaseMap;
import entracte.cue.Touch.Act;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Lays out the picture of a cue: the rows of the case and the words to the shapes. Where one
 * drawing cannot hold all steps, there are several, each with as many steps as it can hold.
 */
final class MapPages {
  private static final double STEP = 0.1;
  private static final double MOST = 1.5;

  /** More of a page than this is not kept free for the words to the shapes. */
  private static final double MOST_WORDS = 0.4;

  private final Lettering lettering;
  private final CaseMap map;
  private final boolean worded;
  private final double capital;
  private final double width;

  /**
   * @param worded whether jacks and knobs are named
   * @param capital the least height of a capital letter, in mm
   * @param width of the paper, in mm
   */
  MapPages(Lettering lettering, CaseMap map, boolean worded, double capital, double width) {
    this.lettering = lettering;
    this.map = map;
    this.worded = worded;
    this.capital = capital;
    this.width = width;
  }

  /** One drawing of all steps, if no row has to be parted for it; else nothing. */
  List<Slab> whole(List<Place> places, double scale) {
    MapDrawing drawing = drawing(places, scale);
    return drawing.isWhole() ? slabs(drawing, places, scale, Double.MAX_VALUE) : List.of();
  }

  /** One drawing of all steps, without untouched rows if all are higher than {@code height}. */
  List<Slab> single(List<Place> places, double scale, double height) {
    return slabs(drawing(places, scale), places, scale, height);
  }

  /** The slabs of each page, no page higher than {@code height}; grown while there is room. */
  List<List<Slab>> pages(List<Place> places, double height) {
    List<List<Slab>> pages = pages(places, height, 1);
    for (double scale = 1 + STEP; scale <= MOST; scale += STEP) {
      List<List<Slab>> grown = pages(places, height, scale);
      if (grown.size() > pages.size() || !drawing(places, scale).isWhole()) {
        return pages;
      }
      pages = grown;
    }
    return pages;
  }

  private List<List<Slab>> pages(List<Place> places, double height, double scale) {
    List<List<Slab>> pages = new ArrayList<>();
    Set<Act> explained = EnumSet.noneOf(Act.class);
    for (List<Place> chunk : chunks(places, height, scale)) {
      Slab legend = legend(chunk, scale, explained);
      pages.addAll(Slab.pages(below(legend, drawing(chunk, scale), height), height));
      chunk.forEach(place -> explained.add(place.touch().act()));
    }
    return pages;
  }

  private List<Slab> slabs(MapDrawing drawing, List<Place> places, double scale, double height) {
    return below(legend(places, scale, Set.of()), drawing, height);
  }

  /** The words stand on the page of the first row. */
  private static List<Slab> below(Slab legend, MapDrawing drawing, double height) {
    List<Slab> slabs = new ArrayList<>(List.of(legend.keeping()));
    slabs.addAll(drawing.rows(height - legend.height()));
    return slabs;
  }

  private Slab legend(List<Place> places, double scale, Set<Act> explained) {
    double size = scale * capital;
    Stamps stamps = new Stamps(lettering, size, map.sweepDegrees());
    return new MapLegend(lettering, stamps, size, width).of(places, explained);
  }

  private MapDrawing drawing(List<Place> places, double scale) {
    return new MapDrawing(lettering, map, places, worded, scale * capital, width);
  }

  /** No row of a drawing may outgrow a page, with the words above it if they are few. */
  private List<List<Place>> chunks(List<Place> places, double page, double scale) {
    double words = legend(places, scale, Set.of()).height();
    double height = words <= MOST_WORDS * page ? page - words : page;
    if (drawing(places, scale).tallest() <= height) {
      return List.of(places);
    }
    List<List<Place>> chunks = new ArrayList<>();
    int from = 0;
    while (from < places.size()) {
      int to = end(places, from, height, scale);
      chunks.add(places.subList(from, to));
      from = to;
    }
    return chunks;
  }

  /** Halves what is open: a drawing costs too much to try one for every place. */
  private int end(List<Place> places, int from, double height, double scale) {
    int fits = from + 1;
    int open = places.size();
    while (fits < open) {
      int middle = (fits + open + 1) / 2;
      if (drawing(places.subList(from, middle), scale).tallest() <= height) {
        fits = middle;
      } else {
        open = middle - 1;
      }
    }
    return fits;
  }
}
