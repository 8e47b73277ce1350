package entracte.check;

import entracte.rig.Direction;
import java.util.List;
import java.util.Map;

/** Cords run from an output to an input. Each wrong end is reported once, with both in view. */
final class WrongWay {
  private final Map<JackAsk, Direction> directions;
  private final Findings findings;

  /**
   * @param directions of every end whose jack was found, by identity
   */
  WrongWay(Map<JackAsk, Direction> directions, Findings findings) {
    this.directions = directions;
    this.findings = findings;
  }

  void check(Wire wire) {
    if (directions.get(wire.source()) == Direction.IN) {
      reportSource(wire);
      return;
    }
    boolean output = directions.get(wire.source()) == Direction.OUT;
    for (JackAsk sink : wire.sinks()) {
      if (directions.get(sink) == Direction.OUT) {
        findings.error(
            sink.end(),
            output
                ? "\"%s\" and \"%s\" are both outputs".formatted(wire.source().end(), sink.end())
                : "\"" + sink.end() + "\" is an output, and cords end at an input",
            "Two outputs are blended in a mixer, never joined by a cord.");
      }
    }
  }

  private void reportSource(Wire wire) {
    String source = wire.source().end().text();
    String sink = wire.sinks().get(0).end().text();
    List<Direction> ends = wire.sinks().stream().map(directions::get).toList();
    if (ends.size() == 1 && ends.get(0) == Direction.OUT) {
      findings.error(
          wire.source().end(),
          "\"%s\" is an input and \"%s\" an output".formatted(source, sink),
          "Write it the other way round: \"%s: %s\".".formatted(sink, source));
    } else {
      findings.error(
          wire.source().end(),
          ends.get(0) == Direction.IN
              ? "\"%s\" and \"%s\" are both inputs".formatted(source, sink)
              : "\"" + source + "\" is an input, and cords start at an output",
          "Write the output first, then the inputs that it feeds.");
    }
  }
}
