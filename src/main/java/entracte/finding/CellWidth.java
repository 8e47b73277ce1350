package entracte.finding;

/**
 * How many cells of a terminal a character takes: none for marks that sit on another character, two
 * for the wide ones of Unicode Standard Annex 11 (the blocks that are wide throughout), else one.
 */
public final class CellWidth {
  /** First and last code point of each wide stretch, rising. */
  private static final int[][] WIDE = {
    {0x1100, 0x115F},
    {0x2E80, 0x303E},
    {0x3041, 0x4DBF},
    {0x4E00, 0xA4CF},
    {0xA960, 0xA97F},
    {0xAC00, 0xD7A3},
    {0xF900, 0xFAFF},
    {0xFE30, 0xFE6F},
    {0xFF00, 0xFF60},
    {0xFFE0, 0xFFE6},
    {0x1F300, 0x1F64F},
    {0x1F680, 0x1F6FF},
    {0x1F900, 0x1F9FF},
    {0x20000, 0x3FFFD},
  };

  private CellWidth() {}

  /** The cells of one code point: 0, 1 or 2. */
  public static int of(int codePoint) {
    int type = Character.getType(codePoint);
    if (type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT) {
      return 0;
    }
    for (int[] stretch : WIDE) {
      if (stretch[0] <= codePoint && codePoint <= stretch[1]) {
        return 2;
      }
    }
    return 1;
  }
}
