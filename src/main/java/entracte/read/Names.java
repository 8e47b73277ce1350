package entracte.read;

import java.util.regex.Pattern;

/** Names as they are compared and shown. */
final class Names {
  /** More than any sensible name has; a message should not repeat a whole paragraph. */
  private static final int SHOWN = 40;

  private static final int FILE_SHOWN = 120;

  private static final Pattern BLANKS = Pattern.compile("\\s+");

  private Names() {}

  /** Without blanks around, and with single blanks within. */
  static String tidy(String text) {
    // Nearly every name is tidy, and a set has very many.
    if (isTidy(text)) {
      return text;
    }
    return BLANKS.matcher(text.strip()).replaceAll(" ");
  }

  private static boolean isTidy(String text) {
    boolean blank = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.isWhitespace(c) && (blank || c != ' ')) {
        return false;
      }
      blank = c == ' ';
    }
    return text.isEmpty() || !blank;
  }

  /** For a message: in quotation marks, on one line, cut if it is long. */
  static String quote(String text) {
    String start =
        text.codePointCount(0, text.length()) > 4 * SHOWN ? first(text, 4 * SHOWN) : text;
    String tidy = tidy(start);
    boolean cut = tidy.codePointCount(0, tidy.length()) > SHOWN;
    return '"' + (cut ? first(tidy, SHOWN) + "..." : tidy) + '"';
  }

  /** A file's name for a message: if it is long, its end tells more than its beginning. */
  static String quoteFile(String name) {
    String tidy = tidy(name);
    int length = tidy.codePointCount(0, tidy.length());
    return length <= FILE_SHOWN
        ? '"' + tidy + '"'
        : "\"..." + tidy.substring(tidy.offsetByCodePoints(0, length - FILE_SHOWN)) + '"';
  }

  private static String first(String text, int codePoints) {
    return text.substring(0, text.offsetByCodePoints(0, codePoints));
  }
}
