package entracte.print;

import java.util.List;

/** Something black on a page. Millimetres from the top left corner; y grows downwards. */
sealed interface Mark {
  /** The same further down and to the right. */
  Mark shifted(double dx, double dy);

  /** How far to the right it reaches. */
  double right();

  /** The height of its capitals, in mm; infinite for what has none. */
  double smallest();

  /** Hands itself to whoever draws. */
  void draw(Pen pen);

  /** Draws marks on something. */
  interface Pen {
    void words(Words words);

    void path(Path path);
  }

  /** A corner of a path. */
  record Point(double x, double y) {
    Point shifted(double dx, double dy) {
      return new Point(x + dx, y + dy);
    }
  }

  /**
   * A line of text.
   *
   * @param baseline the y of the line it stands on
   * @param capital the height of its capital letters
   * @param width how far it runs
   * @param white whether it stands on black
   */
  record Words(
      String text,
      Face face,
      double x,
      double baseline,
      double capital,
      double width,
      boolean white)
      implements Mark {
    @Override
    public Words shifted(double dx, double dy) {
      return new Words(text, face, x + dx, baseline + dy, capital, width, white);
    }

    @Override
    public double right() {
      return x + width;
    }

    @Override
    public double smallest() {
      return capital;
    }

    @Override
    public void draw(Pen pen) {
      pen.words(this);
    }
  }

  /**
   * Straight lines from point to point.
   *
   * @param width of the line; 0 for a filled shape
   */
  record Path(List<Point> points, boolean closed, double width) implements Mark {
    public Path {
      points = List.copyOf(points);
    }

    boolean filled() {
      return width == 0;
    }

    @Override
    public Path shifted(double dx, double dy) {
      return new Path(points.stream().map(p -> p.shifted(dx, dy)).toList(), closed, width);
    }

    @Override
    public double right() {
      return points.stream().mapToDouble(Point::x).max().orElse(0) + width / 2;
    }

    @Override
    public double smallest() {
      return Double.POSITIVE_INFINITY;
    }

    @Override
    public void draw(Pen pen) {
      pen.path(this);
    }
  }
}
