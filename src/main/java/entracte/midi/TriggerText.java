package entracte.midi;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The text of a trigger. */
final class TriggerText {
  private static final Pattern BY_NUMBER =
      Pattern.compile("(cc|note|program) ?(\\d{1,3})(?: on channel (\\d{1,2}))?");
  private static final Pattern KEY =
      Pattern.compile("page down|page up|right|left|down|up|space|enter");

  private TriggerText() {}

  static Optional<Trigger> parse(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    if (KEY.matcher(plain).matches()) {
      return Optional.of(new Trigger.Key(plain));
    }
    Matcher numbered = BY_NUMBER.matcher(plain);
    if (!numbered.matches()) {
      return Optional.empty();
    }
    int number = Integer.parseInt(numbered.group(2));
    int channel = numbered.group(3) == null ? 0 : Integer.parseInt(numbered.group(3));
    int least = numbered.group(1).equals("program") ? 1 : 0;
    if (number < least
        || number > 127 + least
        || channel > 16
        || (numbered.group(3) != null && channel == 0)) {
      return Optional.empty();
    }
    return Optional.of(
        switch (numbered.group(1)) {
          case "cc" -> new Trigger.Controller(number, channel);
          case "note" -> new Trigger.Note(number, channel);
          default -> new Trigger.Program(number, channel);
        });
  }
}
