package entracte.rehearsal;

import java.util.Optional;

/** Someone to talk to in lines. */
public interface Dialogue {
  /** Tells a line. */
  void say(String line);

  /** Tells a line and waits for the answer; empty once there is nobody any more. */
  Optional<String> ask(String line);
}
