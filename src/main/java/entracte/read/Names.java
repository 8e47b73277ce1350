package entracte.read;

/** Names as they are compared and shown. */
final class Names {
  /** More than any sensible name has; a message should not repeat a whole paragraph. */
  private static final int SHOWN = 40;

  private Names() {}

  /** Without blanks around, and with single blanks within. */
  static String tidy(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  /** For a message: in quotation marks, on one line, cut if it is long. */
  static String quote(String text) {
    String tidy = tidy(text.length() > 4 * SHOWN ? text.substring(0, 4 * SHOWN) : text);
    boolean cut = tidy.codePointCount(0, tidy.length()) > SHOWN;
    String shown = cut ? tidy.substring(0, tidy.offsetByCodePoints(0, SHOWN)) + "..." : tidy;
    return '"' + shown + '"';
  }
}
