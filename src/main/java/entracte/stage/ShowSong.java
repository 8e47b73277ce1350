package entracte.stage;

import entracte.cue.GearSends;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One song as the stage knows it.
 *
 * @param lines key, tempo, who starts, notes, as far as the set says
 * @param lengthSeconds how long it sounds
 * @param gapSeconds the silence allowed before it
 * @param encore whether it is played only if called for
 */
public record ShowSong(
    String title,
    List<String> lines,
    OptionalDouble lengthSeconds,
    OptionalDouble gapSeconds,
    boolean encore,
    GearSends sends) {
  public ShowSong {
    lines = List.copyOf(lines);
  }
}
