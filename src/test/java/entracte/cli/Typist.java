package entracte.cli;

import entracte.plan.Planner;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** Types commands and reads what comes back, as one who sits at no terminal. */
final class Typist {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final Planning planning;

  Typist() {
    this(Planner::plan);
  }

  Typist(Planning planning) {
    this.planning = planning;
  }

  /** The exit code of the command, whose output replaces that of the one before. */
  int type(String... words) {
    out.reset();
    err.reset();
    return new Program(new Streams(out, err, false, false), planning).run(words);
  }

  String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
