package entracte.port;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A port as the system lists it. On Linux the name ends with the number of the sound card ({@code
 * MIDI [hw:2,0,0]}), which changes with the order of plugging; that part is no part of a name.
 *
 * @param name without the number of the card
 * @param description what else the system says of it, often the name of the product
 */
public record PortName(String name, String description, boolean takes, boolean gives) {
  static PortName of(String listed, String description, boolean takes, boolean gives) {
    String bare = listed.replaceAll("\\s*\\[hw:[^\\]]*\\]", "").strip();
    return new PortName(bare, description.strip(), takes, gives);
  }

  /**
   * Which of {@code ports} is meant by {@code wanted}: one of exactly that name or description,
   * else the first whose name or description holds it; capitals do not matter.
   */
  static Optional<Integer> find(List<PortName> ports, String wanted) {
    String plain = wanted.strip().toLowerCase(Locale.ROOT);
    if (plain.isEmpty()) {
      return Optional.empty();
    }
    Optional<Integer> holds = Optional.empty();
    for (int i = 0; i < ports.size(); i++) {
      String name = ports.get(i).name().toLowerCase(Locale.ROOT);
      String description = ports.get(i).description().toLowerCase(Locale.ROOT);
      if (name.equals(plain) || description.equals(plain)) {
        return Optional.of(i);
      }
      if (holds.isEmpty() && (name.contains(plain) || description.contains(plain))) {
        holds = Optional.of(i);
      }
    }
    return holds;
  }
}
