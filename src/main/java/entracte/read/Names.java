package entracte.read;

import java.util.regex.Pattern;

/** Names as they are compared and shown. */
final class Names {
  /** More than any sensible name has; a message should not repeat a whole paragraph. */
  private static final int SHOWN = 40;

  private static final Pattern BLANKS = Pattern.compile("\\s+");

  private Names() {}

  /** Without blanks around, and with single blanks within. */
  static String tidy(String text) {
    return BLANKS.matcher(text.strip()).replaceAll(" ");
  }

  /** For a message: in quotation marks, on one line, cut if it is long. */
  static String quote(String text) {
    String start =
        text.codePointCount(0, text.length()) > 4 * SHOWN ? first(text, 4 * SHOWN) : text;
    String tidy = tidy(start);
    boolean cut = tidy.codePointCount(0, tidy.length()) > SHOWN;
    return '"' + (cut ? first(tidy, SHOWN) + "..." : tidy) + '"';
  }

  private static String first(String text, int codePoints) {
    return text.substring(0, text.offsetByCodePoints(0, codePoints));
  }
}
