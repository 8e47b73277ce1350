package entracte.rig;

import java.util.Collection;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What the names of jacks, controls and kinds say, word by word, be they written large or small.
 */
public final class NameWords {
  private static final Set<String> LOUDNESS =
      Set.of("gain", "drive", "boost", "overdrive", "level", "volume");

  private static final Pattern BETWEEN = Pattern.compile("\\W+");

  private NameWords() {}

  /** {@code cutoff}, {@code cv} and {@code 1} of {@code Cutoff CV 1}. */
  public static Stream<String> of(String name) {
    return BETWEEN.splitAsStream(name.strip().toLowerCase(Locale.ROOT));
  }

  /** Whether a name holds one of these words, which are written small. */
  public static boolean say(String name, Collection<String> words) {
    return of(name).anyMatch(words::contains);
  }

  /** Whether a control is named for how loud something is. */
  public static boolean sayLoudness(String name) {
    return say(name, LOUDNESS);
  }
}
