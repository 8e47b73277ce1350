package entracte.setlist;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One song of the set.
 *
 * @param settings this song's own; they stand above those of its patch
 * @param gapSeconds the silence that may stand before this song
 * @param card what the player reads: key, tempo, who starts, notes
 */
public record Song(
    String name,
    Patch patch,
    List<Setting> settings,
    OptionalDouble gapSeconds,
    List<GearCue> gear,
    Card card) {
  public Song {
    Objects.requireNonNull(patch);
    settings = List.copyOf(settings);
    gear = List.copyOf(gear);
  }

  /** What the player reads; each empty if the set does not say. */
  public record Card(
      Optional<String> key,
      Optional<String> tempo,
      Optional<String> starts,
      Optional<String> notes,
      OptionalDouble lengthSeconds) {
    public static Card blank() {
      return new Card(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty());
    }
  }
}
