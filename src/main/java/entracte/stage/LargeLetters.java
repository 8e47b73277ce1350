package entracte.stage;

import java.util.List;
import java.util.Optional;

/** Letters several rows high, from half blocks. */
final class LargeLetters {
  private LargeLetters() {}

  /** The text in the largest letters that fit; empty if none do. */
  static Optional<List<String>> draw(String text, int cells, int rows) {
    return Optional.empty();
  }
}
