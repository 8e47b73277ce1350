package entracte.check;

import java.util.List;
import java.util.Map;

/** Cords run from an output to an input. Each wrong end is reported once, with both in view. */
final class WrongWay {
  private final Map<JackAsk, Boolean> wrong;
  private final Findings findings;

  /**
   * @param wrong for every end, whether its jack carries the signal the other way
   */
  WrongWay(Map<JackAsk, Boolean> wrong, Findings findings) {
    this.wrong = wrong;
    this.findings = findings;
  }

  void check(Wire wire) {
    boolean sourceIsInput = wrong.get(wire.source());
    List<JackAsk> outputs = wire.sinks().stream().filter(wrong::get).toList();
    if (sourceIsInput) {
      reportSource(wire, outputs);
      return;
    }
    for (JackAsk sink : outputs) {
      findings.error(
          sink.end(),
          "\"%s\" and \"%s\" are both outputs".formatted(wire.source().end(), sink.end()),
          "Two outputs are blended in a mixer, never joined by a cord.");
    }
  }

  private void reportSource(Wire wire, List<JackAsk> outputs) {
    String source = wire.source().end().text();
    String sink = wire.sinks().get(0).end().text();
    if (outputs.isEmpty()) {
      findings.error(
          wire.source().end(),
          "\"%s\" and \"%s\" are both inputs".formatted(source, sink),
          "A cord brings a signal from an output to an input.");
    } else if (wire.sinks().size() == 1) {
      findings.error(
          wire.source().end(),
          "\"%s\" is an input and \"%s\" an output".formatted(source, sink),
          "Write it the other way round: \"%s: %s\".".formatted(sink, source));
    } else {
      findings.error(
          wire.source().end(),
          "\"" + source + "\" is an input",
          "Write the output first, then the inputs it feeds.");
    }
  }
}
