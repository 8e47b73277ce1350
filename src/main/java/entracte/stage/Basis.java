package entracte.stage;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a night is played by, as it was when the stage was started. Journals keep it: files may be
 * mended in the middle of a night, and what was pressed before then meant what it meant.
 *
 * @param files the files of the set, by their names, each with a sum of what stands in it
 * @param outline of the show; empty in the journals of earlier versions
 */
public record Basis(Map<String, String> files, Optional<Show> outline) {
  public Basis {
    files = Collections.unmodifiableMap(new TreeMap<>(files));
  }

  /** Nothing is known of it. */
  public static Basis unknown() {
    return new Basis(Map.of(), Optional.empty());
  }
}
