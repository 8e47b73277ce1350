package entracte.rig;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A switch or a jumper of a kind, and what the names of its positions say in decibels: how much
 * louder they make a sound, or how steeply a filter falls. {@code 24 dB} may mean either. It is a
 * slope where the toggle is named for one ({@code slope}, {@code poles}), and on a filter, unless
 * the toggle is named for a gain or one of its positions is no number of poles, each of which takes
 * 6 dB; anywhere else it is a gain. {@code 4-pole} and {@code 24 dB an octave} are always slopes,
 * {@code x10} is always a gain.
 */
public record Toggle(Kind kind, String name, List<String> positions) {
  private static final int DECIBELS_PER_POLE = 6;
  private static final int MOST_POLES = 8;
  private static final Pattern POLES = Pattern.compile("([1-8])[- ]?poles?");
  private static final Pattern DECIBELS = Pattern.compile("(\\d{1,2})(?: ?db)?");
  private static final Pattern AN_OCTAVE =
      Pattern.compile("(\\d{1,2}) ?db(?: an | per | ?/ ?)oct(?:ave|\\.)?");

  private static final Set<String> POLE_WORDS = Set.of("pole", "poles");
  private static final Set<String> SLOPE_WORDS = Set.of("slope", "slopes", "steepness", "rolloff");
  private static final Set<String> GAIN_WORDS =
      Set.of("gain", "drive", "boost", "overdrive", "level", "volume", "input", "output", "pad");

  private static final Set<String> FILTER_WORDS = Set.of("filter", "pass", "lowpass", "highpass");
  private static final String CUTOFF = "cutoff";

  public Toggle {
    positions = List.copyOf(positions);
  }

  public static Toggle of(Control control) {
    return new Toggle(control.module().kind(), control.name(), control.positions());
  }

  public static Toggle of(Kind kind, Jumper jumper) {
    return new Toggle(kind, jumper.name(), jumper.positions());
  }

  /** The kind's switch of that name; one without positions if it has none. */
  public static Toggle of(Kind kind, String name) {
    List<String> positions =
        kind.groups().stream()
            .flatMap(group -> group.switches().stream())
            .filter(each -> each.name().equals(name))
            .findFirst()
            .map(Switch::positions)
            .orElse(List.of());
    return new Toggle(kind, name, positions);
  }

  /** How many times the voltage at a position; empty for one that is no gain. */
  public OptionalDouble gain(String position) {
    return slope(position).isPresent() ? OptionalDouble.empty() : GainStep.factor(position);
  }

  /** Whether any position is a gain. */
  public boolean hasGain() {
    return positions.stream().anyMatch(position -> gain(position).isPresent());
  }

  /** By how many decibels an octave the filter falls at a position; empty for no slope. */
  public OptionalInt slope(String position) {
    String text = plain(position);
    Matcher poles = POLES.matcher(text);
    if (poles.matches()) {
      return OptionalInt.of(DECIBELS_PER_POLE * figure(poles));
    }
    Matcher octave = AN_OCTAVE.matcher(text);
    if (octave.matches()) {
      return OptionalInt.of(figure(octave));
    }
    Matcher decibels = DECIBELS.matcher(text);
    if (!decibels.matches()) {
      return OptionalInt.empty();
    }
    boolean bare = !text.endsWith("db");
    if (bare && NameWords.say(name, POLE_WORDS)) {
      return OptionalInt.of(DECIBELS_PER_POLE * figure(decibels));
    }
    boolean named = NameWords.say(name, POLE_WORDS) || NameWords.say(name, SLOPE_WORDS);
    return named || !bare && isOnFilter() ? OptionalInt.of(figure(decibels)) : OptionalInt.empty();
  }

  private boolean isOnFilter() {
    boolean filter =
        NameWords.say(kind.name(), FILTER_WORDS)
            || kind.groups().stream().anyMatch(group -> group.knob(CUTOFF).isPresent());
    return filter
        && !NameWords.say(name, GAIN_WORDS)
        && positions.stream().flatMap(Toggle::decibels).allMatch(Toggle::isWholePoles);
  }

  private static Stream<String> decibels(String position) {
    String text = plain(position);
    return text.endsWith("db") ? Stream.of(text) : Stream.empty();
  }

  private static boolean isWholePoles(String text) {
    Matcher decibels = DECIBELS.matcher(text);
    int figure = decibels.matches() ? figure(decibels) : 0;
    return figure > 0
        && figure % DECIBELS_PER_POLE == 0
        && figure <= MOST_POLES * DECIBELS_PER_POLE;
  }

  private static int figure(Matcher matcher) {
    return Integer.parseInt(matcher.group(1));
  }

  private static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }
}
