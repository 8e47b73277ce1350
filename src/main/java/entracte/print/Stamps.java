package entracte.print;

import entracte.cue.Touch;
import entracte.cue.Touch.Travel;
import entracte.print.Mark.Path;
import entracte.print.Mark.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Draws what hands do at a place, told apart by shape: a plug that goes in is solid and points
 * down, one that comes out is hollow and points up, a knob is round with its old and new pointer, a
 * switch is a ladder of its positions, an oscillator to tune is a fork.
 */
final class Stamps {
  /** All sizes in heights of a capital letter. */
  private static final double HEIGHT = 2.4;

  private static final double SHOULDER = 1.75;
  private static final double PADDING = 0.27;
  private static final double LADDER = 1.2;
  private static final double FORK = 1.2;

  /** The ring of an old position, from rim to rim: no smaller than the least letter. */
  private static final double RING = Legibility.LEAST_PART;

  private static final double GAP = 0.35;
  private static final double LINE = 0.12;
  private static final double THICK = 0.28;

  /** More positions than this are too fine to draw one by one. */
  private static final int MOST_RUNGS = 8;

  /** What the room of an undivided ladder is measured by. */
  private static final int COARSE_RUNGS = 3;

  private static final int CORNERS = 60;

  private final Lettering lettering;
  private final double capital;
  private final double sweepDegrees;

  Stamps(Lettering lettering, double capital, double sweepDegrees) {
    this.lettering = lettering;
    this.capital = capital;
    this.sweepDegrees = sweepDegrees;
  }

  double height() {
    return HEIGHT * capital;
  }

  /** A ladder of many rungs is taller: each can be seen from where a letter can be read. */
  double height(Place place) {
    int stops = place.touch().travel().map(Travel::stops).orElse(0);
    return Math.max(HEIGHT, Legibility.LEAST_PART * rungs(stops)) * capital;
  }

  private static int rungs(int stops) {
    return stops > MOST_RUNGS ? COARSE_RUNGS : Math.max(1, stops);
  }

  double width(Place place) {
    double label = lettering.width(place.label(), Face.BOLD, capital);
    return label + extra(place.touch().act()) * capital;
  }

  private static double extra(Touch.Act act) {
    return switch (act) {
      case PULL, PLUG -> 2 * PADDING;
      case TURN -> HEIGHT + GAP;
      case SWITCH -> LADDER + GAP;
      case TUNE -> FORK + GAP;
    };
  }

  /** The marks of a place, from its top left corner. */
  List<Mark> draw(Place place, double x, double y) {
    List<Mark> marks = new ArrayList<>();
    Travel travel = place.touch().travel().orElse(new Travel(0, OptionalDouble.empty(), 0));
    switch (place.touch().act()) {
      case PLUG -> marks.addAll(plug(place, x, y));
      case PULL -> marks.addAll(pull(place, x, y));
      case TURN -> marks.addAll(dial(travel, x, y));
      case SWITCH -> marks.addAll(ladder(travel, x, y, height(place)));
      case TUNE -> marks.addAll(fork(x, y));
    }
    double left = x + width(place) - lettering.width(place.label(), Face.BOLD, capital);
    return switch (place.touch().act()) {
      case PLUG, PULL -> marks;
      case TURN, SWITCH, TUNE -> {
        marks.add(label(place, left, y + (height(place) + capital) / 2, false));
        yield marks;
      }
    };
  }

  private Mark label(Place place, double x, double baseline, boolean white) {
    Mark.Words words = lettering.words(place.label(), Face.BOLD, x, baseline, capital);
    return new Mark.Words(words.text(), Face.BOLD, x, baseline, capital, words.width(), white);
  }

  private List<Mark> plug(Place place, double x, double y) {
    double right = x + width(place);
    double shoulder = y + SHOULDER * capital;
    Path body =
        new Path(
            List.of(
                new Point(x, y),
                new Point(right, y),
                new Point(right, shoulder),
                new Point((x + right) / 2, y + height()),
                new Point(x, shoulder)),
            true,
            0);
    return List.of(
        body, label(place, x + PADDING * capital, y + (SHOULDER + 1) / 2 * capital, true));
  }

  private List<Mark> pull(Place place, double x, double y) {
    double right = x + width(place);
    double shoulder = y + (HEIGHT - SHOULDER) * capital;
    double half = LINE * capital / 2;
    Path body =
        new Path(
            List.of(
                new Point(x + half, y + height() - half),
                new Point(right - half, y + height() - half),
                new Point(right - half, shoulder),
                new Point((x + right) / 2, y + half),
                new Point(x + half, shoulder)),
            true,
            LINE * capital);
    double baseline = y + height() - (SHOULDER - 1) / 2 * capital;
    return List.of(body, label(place, x + PADDING * capital, baseline, false));
  }

  private List<Mark> dial(Travel travel, double x, double y) {
    double radius = height() / 2;
    double rim = radius * 0.8;
    Point centre = new Point(x + radius, y + radius);
    List<Mark> marks = new ArrayList<>();
    marks.add(arc(centre, rim, angle(0), angle(1), LINE * capital));
    travel
        .from()
        .ifPresent(
            from -> {
              marks.add(ray(centre, angle(from), 0, rim * 0.75, LINE * capital));
              marks.add(arc(at(centre, angle(from), rim), radius * 0.16, 0, 360, LINE * capital));
            });
    marks.add(ray(centre, angle(travel.to()), 0, radius, THICK * capital));
    return marks;
  }

  /** Degrees clockwise from straight up; the scale lies evenly to both sides. */
  double angle(double part) {
    return (part - 0.5) * sweepDegrees;
  }

  private static Point at(Point centre, double degrees, double radius) {
    double radians = Math.toRadians(degrees);
    return new Point(
        centre.x() + radius * Math.sin(radians), centre.y() - radius * Math.cos(radians));
  }

  private static Path ray(Point centre, double degrees, double from, double to, double width) {
    return new Path(List.of(at(centre, degrees, from), at(centre, degrees, to)), false, width);
  }

  private static Path arc(Point centre, double radius, double from, double to, double width) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= CORNERS; i++) {
      points.add(at(centre, from + (to - from) * i / CORNERS, radius));
    }
    return new Path(points, false, width);
  }

  private List<Mark> ladder(Travel travel, double x, double y, double height) {
    double half = LINE * capital / 2;
    double right = x + LADDER * capital;
    List<Mark> marks = new ArrayList<>();
    marks.add(box(x + half, y + half, right - half, y + height - half, LINE * capital));
    int rungs = rungs(travel.stops());
    double step = height / rungs;
    for (int i = 1; i < rungs && travel.stops() <= MOST_RUNGS; i++) {
      marks.add(
          new Path(
              List.of(new Point(x, y + i * step), new Point(right, y + i * step)),
              false,
              LINE * capital / 2));
    }
    travel.from().ifPresent(from -> marks.add(rung(from, step, rungs, x, y, LINE * capital)));
    marks.add(rung(travel.to(), step, rungs, x, y, 0));
    return marks;
  }

  /** The new position fills its place; the old one is a small ring in its own. */
  private Path rung(double part, double step, int rungs, double x, double y, double width) {
    double top = y + part * (rungs - 1) * step;
    if (width > 0) {
      Point middle = new Point(x + LADDER * capital / 2, top + step / 2);
      return arc(middle, (RING * capital - width) / 2, 0, 360, width);
    }
    return box(x, top, x + LADDER * capital, top + step, 0);
  }

  private static Path box(double left, double top, double right, double bottom, double width) {
    return new Path(
        List.of(
            new Point(left, top),
            new Point(right, top),
            new Point(right, bottom),
            new Point(left, bottom)),
        true,
        width);
  }

  private List<Mark> fork(double x, double y) {
    double half = THICK * capital / 2;
    double left = x + half;
    double right = x + FORK * capital - half;
    double middle = (left + right) / 2;
    double bend = y + height() * 0.6;
    Path prongs =
        new Path(
            List.of(
                new Point(left, y + half),
                new Point(left, bend),
                new Point(right, bend),
                new Point(right, y + half)),
            false,
            THICK * capital);
    Path stem =
        new Path(
            List.of(new Point(middle, bend), new Point(middle, y + height() - half)),
            false,
            THICK * capital);
    return List.of(prongs, stem);
  }
}
