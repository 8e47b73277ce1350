package entracte.rehearsal;

import entracte.cue.Step;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What makes a changeover the same one: the moves in their order and the places they go to. How far
 * a knob turns, how a step is worded and what is tuned may change without making it another.
 */
final class Mark {
  private static final int BYTES = 5;

  private Mark() {}

  /** Ten hexadecimal digits. */
  static String of(List<Step> steps) {
    String moves =
        steps.stream()
            .filter(step -> step.moves() > 0)
            .map(Mark::line)
            .collect(Collectors.joining());
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(moves.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest, 0, BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static String line(Step step) {
    return step.verb().word()
        + step.reach().stream()
            .map(spot -> " " + spot.module() + "#" + spot.part())
            .collect(Collectors.joining())
        + "\n";
  }
}
