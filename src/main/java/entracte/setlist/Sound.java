package entracte.setlist;

import java.util.List;
import java.util.Optional;

/**
 * What a patch says for the ear. Nothing of it moves a hand by itself.
 *
 * @param tune by role: what it is tuned to, such as {@code pure fifth above bass}
 * @param scale by role: how far one key goes, such as {@code quarter tones}
 * @param drive by role: {@code wanted} if it is pushed into distortion on purpose
 * @param listenFor what tells that the sound is right
 */
public record Sound(
    List<Wish> tune, List<Wish> scale, List<Wish> drive, Optional<String> listenFor) {
  public Sound {
    tune = List.copyOf(tune);
    scale = List.copyOf(scale);
    drive = List.copyOf(drive);
  }

  /** A role, and what is wished for it, as written. */
  public record Wish(String role, String value) {}

  /** Of which nothing is said. */
  public static Sound unsaid() {
    return new Sound(List.of(), List.of(), List.of(), Optional.empty());
  }

  /** What is wished for {@code role}; of several the last. */
  public static Optional<String> of(String role, List<Wish> wishes) {
    return wishes.stream()
        .filter(wish -> wish.role().equals(role))
        .map(Wish::value)
        .reduce((first, second) -> second);
  }
}
