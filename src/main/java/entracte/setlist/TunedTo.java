package entracte.setlist;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a role is tuned to: a note, or a distance from another role. */
public sealed interface TunedTo {
  /** {@code E2}: the same whatever the keys play. */
  record At(Note note) implements TunedTo {}

  /**
   * {@code pure fifth above bass}.
   *
   * @param below whether it lies under the other
   */
  record From(String role, Distance distance, boolean below) implements TunedTo {
    /** Above the other, or less than nothing below it. */
    public double cents() {
      return below ? -distance.cents() : distance.cents();
    }
  }

  /** How it is written, for advice. */
  String FORM = "Write it like \"pure fifth above bass\", \"unison with bass\" or \"E2\".";

  Pattern UNISON = Pattern.compile("(?:in )?unison with (.+)");
  Pattern FROM = Pattern.compile("(.+?) (above|below) (.+)");

  /** Reads what stands behind a role's name; empty if it is nothing of the kind. */
  static Optional<TunedTo> parse(String text) {
    String plain = text.strip().replaceAll("\\s+", " ");
    Matcher unison = UNISON.matcher(plain);
    if (unison.matches()) {
      Distance none = Distance.parse("unison").orElseThrow();
      return Optional.of(new From(unison.group(1), none, false));
    }
    Matcher from = FROM.matcher(plain);
    if (from.matches()) {
      boolean below = from.group(2).equals("below");
      return Distance.parse(from.group(1)).map(d -> new From(from.group(3), d, below));
    }
    return Note.parse(plain).map(At::new);
  }
}
