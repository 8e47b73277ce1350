package entracte.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What of a move must be read from afar: where the one plug or hand goes, and where the other. The
 * whole sentence stands above it in small letters.
 */
final class Headline {
  private static final Pattern CORD = Pattern.compile("(PLUG|PULL) (.+), then (.+)");
  private static final Pattern SHIFT = Pattern.compile("MOVE from (.+), to (.+); keep .*");
  private static final Pattern SETTING =
      Pattern.compile("(?:TURN|SWITCH) (.+?)(?: from .+)? (to .+)");
  private static final Pattern ASIDE = Pattern.compile(" \\(.*|; .*| before .*|, then by ear");

  private Headline() {}

  /** Lines to be drawn large, the best choice first; each later one needs less room. */
  static List<List<String>> of(String text) {
    String plain = ASIDE.matcher(text).replaceFirst("");
    Matcher cord = CORD.matcher(plain);
    if (cord.matches()) {
      return List.of(
          List.of(cord.group(1) + " " + cord.group(2), cord.group(3)),
          List.of(cord.group(1), cord.group(2), cord.group(3)),
          List.of(cord.group(2), cord.group(3)),
          List.of(cord.group(1)));
    }
    Matcher shift = SHIFT.matcher(text);
    if (shift.matches()) {
      return List.of(
          List.of("from " + shift.group(1), "to " + shift.group(2)),
          List.of("MOVE", shift.group(1), shift.group(2)),
          List.of(shift.group(1), shift.group(2)),
          List.of("MOVE"));
    }
    Matcher setting = SETTING.matcher(plain);
    if (setting.matches()) {
      return List.of(
          List.of(setting.group(1), setting.group(2)),
          List.of(plain.split(" ", 2)[0], setting.group(2)));
    }
    List<List<String>> choices = new ArrayList<>();
    choices.add(List.of(plain));
    choices.add(List.of(plain.split(" ", 2)[0]));
    return choices;
  }
}
