package entracte.check;

import entracte.rig.Figures;
import entracte.rig.Group;
import entracte.rig.Kind;
import entracte.rig.Knob;
import entracte.rig.Scale;
import entracte.setlist.Interval;
import java.util.List;
import java.util.Optional;

/** A tolerance that reaches beyond both ends of a knob's scale says nothing, and was a slip. */
final class Leeway {
  private final Findings findings;

  Leeway(Findings findings) {
    this.findings = findings;
  }

  /** Looks at each knob of roles whose settings are sound; the first kind that has it decides. */
  void check(List<RoleDraft> drafts) {
    for (RoleDraft draft : drafts) {
      for (ControlAsk ask : draft.controls()) {
        Optional<Scale> scale = scale(ask);
        Interval.parse(ask.value())
            .filter(interval -> scale.isPresent() && exceeds(interval, scale.get()))
            .ifPresent(interval -> report(ask, scale.orElseThrow()));
      }
    }
  }

  private static boolean exceeds(Interval interval, Scale scale) {
    return interval.low() < scale.low() && interval.high() > scale.high();
  }

  private static Optional<Scale> scale(ControlAsk ask) {
    return ask.role().offers().stream()
        .map(RoleDraft.Offer::kind)
        .flatMap(kind -> group(kind, ask).flatMap(g -> g.knob(ask.control())).stream())
        .map(Knob::scale)
        .findFirst();
  }

  private static Optional<Group> group(Kind kind, ControlAsk ask) {
    return ask.channel().isEmpty() ? Optional.of(kind.own()) : kind.channels();
  }

  private void report(ControlAsk ask, Scale scale) {
    findings.warning(
        ask.setting().value(),
        ask.setting(),
        "\"%s\" lets \"%s\" stand anywhere: its scale runs from %s to %s"
            .formatted(
                ask.value(),
                ask.control(),
                Figures.plain(scale.low()),
                Figures.plain(scale.high())),
        "Write a tolerance smaller than the scale, or leave the setting out.");
  }
}
