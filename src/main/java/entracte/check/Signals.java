package entracte.check;

import entracte.check.Part.JackUse;
import entracte.check.Part.Net;
import entracte.rig.Signal;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A signal goes where it can do something, as far as the kinds say what their jacks carry. Only
 * what is nearly always a slip is told: a gate heard as audio clicks, audio in a gate input fires
 * at random. Audio may well be a control (that is how bells are made), a control may bend a pitch,
 * and a gate may step a control.
 */
final class Signals {
  private static final Map<Signal, Set<Signal>> SLIPS =
      Map.of(
          Signal.AUDIO, EnumSet.of(Signal.PITCH, Signal.GATE),
          Signal.CONTROL, EnumSet.of(Signal.AUDIO),
          Signal.PITCH, EnumSet.of(Signal.AUDIO, Signal.GATE),
          Signal.GATE, EnumSet.of(Signal.AUDIO, Signal.PITCH));

  private final Findings findings;

  Signals(Findings findings) {
    this.findings = findings;
  }

  void check(Part part, List<RoleDraft> drafts) {
    for (Net net : part.nets()) {
      Optional<Signal> gives = signal(part, net.source());
      for (JackUse sink : net.sinks()) {
        Optional<Signal> takes = signal(part, sink);
        if (gives.isPresent() && takes.isPresent() && slips(gives.get(), takes.get())) {
          report(part, net.source(), gives.get(), sink, takes.get(), drafts);
        }
      }
    }
  }

  private static boolean slips(Signal gives, Signal takes) {
    return SLIPS.get(gives).contains(takes);
  }

  private void report(
      Part part, JackUse source, Signal gives, JackUse sink, Signal takes, List<RoleDraft> drafts) {
    findings.warning(
        drafts.get(sink.owner().role()).sink(part.strip(sink), sink.jack()),
        "\"%s\" of \"%s\" gives %s, and \"%s\" of \"%s\" takes %s"
            .formatted(
                source.jack(),
                role(part, source),
                gives.word(),
                sink.jack(),
                role(part, sink),
                takes.word()),
        "If that is meant, leave one of the two jacks out of the \"signals\" of its kind.");
  }

  private static String role(Part part, JackUse jack) {
    return part.roles().get(jack.owner().role()).name();
  }

  /** What every candidate agrees on; empty if one says nothing or otherwise. */
  private static Optional<Signal> signal(Part part, JackUse jack) {
    List<Optional<Signal>> said =
        part.roles().get(jack.owner().role()).candidates().stream()
            .map(module -> module.kind().electrics().signal(jack.jack()))
            .distinct()
            .toList();
    return said.size() == 1 ? said.get(0) : Optional.empty();
  }
}
