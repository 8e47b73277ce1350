package entracte.rehearsal;

import java.util.Optional;
import java.util.function.DoubleSupplier;

/** Someone to talk to in lines. */
public interface Dialogue {
  /** Tells a line. */
  void say(String line);

  /** Tells a line and waits for the answer; empty once there is nobody any more. */
  Optional<String> ask(String line);

  /**
   * The same while a clock runs. Who can change what was told already may show it.
   *
   * @param seconds what the clock says
   */
  default Optional<String> ask(String line, DoubleSupplier seconds) {
    return ask(line);
  }
}
