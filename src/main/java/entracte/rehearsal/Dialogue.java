package entracte.rehearsal;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Someone to talk to in lines. */
public interface Dialogue {
  /** Tells a line. */
  void say(String line);

  /** Tells lines that belong together. Who has little room may stop on the way. */
  default void list(List<String> lines) {
    lines.forEach(this::say);
  }

  /** Tells a line and waits for the answer; empty once there is nobody any more. */
  Optional<String> ask(String line);

  /**
   * The same while a clock runs. Who can change what was told already may show it.
   *
   * @param clock what the clock says
   */
  default Optional<String> ask(String line, Supplier<String> clock) {
    return ask(line);
  }
}
