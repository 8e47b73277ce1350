package entracte.print;

import java.lang.Character.UnicodeScript;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * The order in which letters are drawn from left to right. In a PDF nobody turns Hebrew round for
 * us: it is drawn as its letters come. Every line is taken as a line of English, in which a Hebrew
 * title is a guest.
 */
final class Visual {
  /** A letter with the marks that sit on it. */
  private static final Pattern CLUSTER = Pattern.compile("\\X", Pattern.DOTALL);

  private static final String BRACKETS = "()[]{}<>\u00AB\u00BB\u2039\u203A";

  /** Their letters change with their neighbours, which takes more than an order. */
  private static final Set<UnicodeScript> JOINED =
      EnumSet.of(
          UnicodeScript.ARABIC, UnicodeScript.SYRIAC, UnicodeScript.NKO, UnicodeScript.MANDAIC);

  private Visual() {}

  /** Whether a letter cannot be set by itself, even if the font has a shape for it. */
  static boolean isJoined(int codePoint) {
    return JOINED.contains(UnicodeScript.of(codePoint));
  }

  /** The same letters, those of a right-to-left script turned round. */
  static String order(String text) {
    if (!Bidi.requiresBidi(text.toCharArray(), 0, text.length())) {
      return text;
    }
    Bidi bidi = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
    List<String> clusters = new ArrayList<>();
    List<Integer> levels = new ArrayList<>();
    for (MatchResult each : CLUSTER.matcher(text).results().toList()) {
      int level = bidi.getLevelAt(each.start());
      clusters.add(level % 2 == 0 ? each.group() : mirrored(each.group()));
      levels.add(level);
    }
    byte[] depths = new byte[levels.size()];
    for (int i = 0; i < depths.length; i++) {
      depths[i] = levels.get(i).byteValue();
    }
    String[] visual = clusters.toArray(String[]::new);
    Bidi.reorderVisually(depths, 0, visual, 0, visual.length);
    return String.join("", visual);
  }

  /** A bracket opens to the other side where one reads the other way. */
  private static String mirrored(String cluster) {
    int place = BRACKETS.indexOf(cluster);
    return cluster.length() == 1 && place >= 0
        ? BRACKETS.substring(place ^ 1, (place ^ 1) + 1)
        : cluster;
  }
}
