package entracte.print;

/** What the sheets are printed on. Sizes in mm, upright. */
public enum Paper {
  A4(210, 297, 10),
  LETTER(215.9, 279.4, 10),
  A5(148, 210, 8),
  /** A strip a third of A4 wide, in one column, for a music stand. */
  STAND(99, 297, 6);

  private final double widthMm;
  private final double heightMm;
  private final double marginMm;

  Paper(double widthMm, double heightMm, double marginMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
    this.marginMm = marginMm;
  }

  /** As it is typed: {@code a4}. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  Format upright() {
    return new Format(widthMm, heightMm, marginMm);
  }

  /** For pictures; a strip on a music stand is not turned. */
  Format lying() {
    return this == STAND ? upright() : new Format(heightMm, widthMm, marginMm);
  }

  /** A sheet as it is held, in mm; nothing is printed on its margins. */
  record Format(double width, double height, double margin) {
    double innerWidth() {
      return width - 2 * margin;
    }

    double innerHeight() {
      return height - 2 * margin;
    }
  }
}
