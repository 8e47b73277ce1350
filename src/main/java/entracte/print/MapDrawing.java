package entracte.print;

import entracte.cue.CaseMap;
import entracte.cue.CaseMap.Panel;
import entracte.print.Mark.Path;
import entracte.print.Mark.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Draws the case: each module an outlined box with its name, as wide beside the others as it is in
 * the rig, and in it the places of the moves. A row that is wider than the paper is parted between
 * modules. Letters keep their size; where a box cannot hold a name or a stamp at the scale of the
 * others, the whole case is drawn larger, and a single box only if even that does not help.
 */
final class MapDrawing {
  private static final double PAD = 0.2;
  private static final int NAME_LINES = 3;
  private static final double ROW_GAP = 0.8;
  private static final double LINE_MM = 0.35;

  /** A small case is not blown up further than this. */
  private static final double MOST_AIR = 2;

  private final Lettering lettering;
  private final CaseMap map;
  private final double capital;
  private final double width;
  private final MapCells cells;
  private final Map<String, List<Place>> places = new HashMap<>();
  private final Map<Panel, Double> needs = new HashMap<>();
  private final Map<Panel, List<String>> names = new HashMap<>();
  private final double scale;
  private final List<Part> parts;

  /**
   * What stands side by side on the paper.
   *
   * @param label which row and which part of it; empty for a row that is drawn in one piece
   */
  private record Part(List<Panel> panels, String label) {}

  /**
   * @param places all that shall be drawn
   * @param worded whether jacks and knobs are named
   * @param width of the paper, in mm
   */
  MapDrawing(
      Lettering lettering,
      CaseMap map,
      List<Place> places,
      boolean worded,
      double capital,
      double width) {
    this.lettering = lettering;
    this.map = map;
    this.capital = capital;
    this.width = width;
    Stamps stamps = new Stamps(lettering, capital, map.sweepDegrees());
    this.cells = new MapCells(lettering, stamps, capital, worded);
    for (Place place : places) {
      String module = place.touch().spot().module();
      this.places.computeIfAbsent(module, name -> new ArrayList<>()).add(place);
    }
    this.scale = fitting();
    this.parts = parts();
  }

  /** The rows of the case, top row first; without untouched parts if not all fits the height. */
  List<Slab> rows(double height) {
    List<Slab> all = parts.stream().flatMap(part -> draw(part).stream()).toList();
    if (all.stream().mapToDouble(Slab::height).sum() <= height) {
      return all;
    }
    return parts.stream().filter(this::isTouched).flatMap(part -> draw(part).stream()).toList();
  }

  /** Whether each row of the case is drawn in one piece. */
  boolean isWhole() {
    return parts.size() == map.rows().size();
  }

  /** The height of the tallest row with its label. */
  double tallest() {
    return parts.stream()
        .mapToDouble(part -> draw(part).stream().mapToDouble(Slab::height).sum())
        .max()
        .orElse(0);
  }

  private boolean isTouched(Part part) {
    return part.panels().stream().anyMatch(panel -> places.containsKey(panel.module()));
  }

  private List<Place> in(Panel panel) {
    return places.getOrDefault(panel.module(), List.of());
  }

  private double pad() {
    return PAD * capital;
  }

  /** What a box must have for its widest word and its widest stamp. */
  private double need(Panel panel) {
    return needs.computeIfAbsent(panel, this::measured);
  }

  private double measured(Panel panel) {
    double name = lettering.widestWord(panel.module(), Face.PLAIN, capital);
    double stamp = in(panel).stream().mapToDouble(cells::need).max().orElse(0);
    return Math.min(width, Math.max(name, stamp) + 2 * pad());
  }

  /** Millimetres on paper for a centimetre of the case. */
  private double fitting() {
    double needed = panels().mapToDouble(panel -> need(panel) / panel.widthCm()).max().orElse(1);
    double widestRow = map.rows().stream().mapToDouble(MapDrawing::lengthCm).max().orElse(1);
    double widestPanel = panels().mapToDouble(Panel::widthCm).max().orElse(1);
    double filling = Math.min(width / widestRow, MOST_AIR * needed);
    return Math.min(Math.max(needed, filling), width / widestPanel);
  }

  private Stream<Panel> panels() {
    return map.rows().stream().flatMap(List::stream);
  }

  private static double lengthCm(List<Panel> row) {
    return row.stream().mapToDouble(Panel::widthCm).sum();
  }

  private double widthOf(Panel panel) {
    return Math.max(panel.widthCm() * scale, need(panel));
  }

  private List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    for (int row = 0; row < map.rows().size(); row++) {
      List<List<Panel>> pieces = evenly(map.rows().get(row));
      String inRow = map.rows().size() == 1 ? "" : "row " + (row + 1) + ", ";
      for (int i = 0; i < pieces.size(); i++) {
        parts.add(
            new Part(pieces.get(i), pieces.size() == 1 ? "" : inRow + side(i, pieces.size())));
      }
    }
    return parts;
  }

  private static String side(int part, int parts) {
    if (parts == 2) {
      return part == 0 ? "left part" : "right part";
    }
    return "part " + (part + 1) + " of " + parts + " from the left";
  }

  /** As few parts as the paper allows, of about the same width. */
  private List<List<Panel>> evenly(List<Panel> row) {
    int fewest = parted(row, width).size();
    double limit = row.stream().mapToDouble(panel -> widthOf(panel)).sum() / fewest;
    while (limit < width && parted(row, limit).size() > fewest) {
      limit++;
    }
    return parted(row, Math.min(limit, width));
  }

  private List<List<Panel>> parted(List<Panel> row, double limit) {
    List<List<Panel>> parts = new ArrayList<>();
    List<Panel> part = new ArrayList<>();
    double used = 0;
    for (Panel panel : row) {
      double wide = widthOf(panel);
      // Sums of the same widths in another order differ in the last bit.
      if (!part.isEmpty() && used + wide > limit + 1e-6) {
        parts.add(part);
        part = new ArrayList<>();
        used = 0;
      }
      part.add(panel);
      used += wide;
    }
    parts.add(part);
    return parts;
  }

  /** A part of a row, under its label. */
  private List<Slab> draw(Part part) {
    return part.label().isEmpty() ? List.of(boxes(part)) : List.of(label(part), boxes(part));
  }

  private Slab label(Part part) {
    List<String> lines = lettering.wrap(part.label(), Face.PLAIN, capital, width, 0);
    return Slab.of(
            lines.size() * lettering.lineHeight(capital),
            lettering.block(lines, Face.PLAIN, 0, 0, capital, 0))
        .keeping();
  }

  private Slab boxes(Part part) {
    double height = height(part);
    List<Mark> marks = new ArrayList<>();
    double x = 0;
    for (Panel panel : part.panels()) {
      double wide = widthOf(panel);
      marks.add(frame(x, wide, height - ROW_GAP * capital));
      List<String> name = name(panel, wide);
      marks.addAll(lettering.block(name, Face.PLAIN, x + pad(), pad(), capital, 0));
      double y = pad() + name.size() * lettering.lineHeight(capital);
      for (Mark mark : cells(panel, wide).marks()) {
        marks.add(mark.shifted(x + pad(), y));
      }
      x += wide;
    }
    return Slab.of(height, marks);
  }

  private List<String> name(Panel panel, double wide) {
    return names.computeIfAbsent(
        panel,
        each -> lettering.name(each.module(), Face.PLAIN, capital, wide - 2 * pad(), NAME_LINES));
  }

  private double height(Part part) {
    return part.panels().stream()
            .mapToDouble(panel -> height(panel, widthOf(panel)))
            .max()
            .orElse(0)
        + ROW_GAP * capital;
  }

  private double height(Panel panel, double wide) {
    double title = name(panel, wide).size() * lettering.lineHeight(capital);
    return 2 * pad() + title + cells(panel, wide).height();
  }

  private Slab cells(Panel panel, double wide) {
    return cells.set(in(panel), wide - 2 * pad());
  }

  private static Path frame(double x, double wide, double height) {
    return new Path(
        List.of(
            new Point(x, 0),
            new Point(x + wide, 0),
            new Point(x + wide, height),
            new Point(x, height)),
        true,
        LINE_MM);
  }
}
