package entracte.stage;

import entracte.finding.CellWidth;

/** How many cells of a terminal text takes. */
final class Cells {
  private Cells() {}

  static int of(int point) {
    return CellWidth.of(point);
  }

  static int of(String text) {
    return text.codePoints().map(Cells::of).sum();
  }

  /** As much of the text as fits, with two dots if some was cut. */
  static String cut(String text, int cells) {
    if (of(text) <= cells) {
      return text;
    }
    StringBuilder kept = new StringBuilder();
    int used = 0;
    for (int point : text.codePoints().toArray()) {
      if (used + of(point) > cells - 2) {
        break;
      }
      used += of(point);
      kept.appendCodePoint(point);
    }
    return kept + "..".substring(0, Math.max(0, Math.min(2, cells)));
  }
}
