package entracte.check;

import entracte.check.Part.CastRole;
import entracte.check.Part.Wanted;
import entracte.rig.GainStep;
import entracte.rig.Toggle;
import entracte.setlist.Sound;
import java.util.List;
import java.util.OptionalDouble;

/** A gain step that is up distorts or drives; whether that is wanted, only the patch can say. */
final class Driven {
  /** Below this a step is a trim. */
  private static final double LEAST_DB = 6;

  private final Findings findings;

  Driven(Findings findings) {
    this.findings = findings;
  }

  void check(Part part, List<RoleDraft> drafts) {
    for (Wanted wanted : part.settings()) {
      if (wanted instanceof Wanted.Switch step) {
        CastRole cast = part.roles().get(step.owner().role());
        Toggle toggle = Toggle.of(cast.candidates().get(0).kind(), step.control());
        OptionalDouble factor = toggle.gain(step.position());
        String role = cast.name();
        boolean said = Sound.of(role, part.song().patch().sound().drive()).isPresent();
        if (factor.isPresent() && factor.getAsDouble() >= GainStep.factorOf(LEAST_DB) && !said) {
          findings.note(
              drafts.get(step.owner().role()).settingOf(step.control()),
              "\"%s\" of \"%s\" at %s is %s, and the patch does not say whether it may distort"
                  .formatted(
                      step.control(),
                      role,
                      step.position(),
                      GainStep.words(GainStep.decibels(factor.getAsDouble()))),
              "Add drive: {%s: wanted}, or unwanted.".formatted(role));
        }
      }
    }
  }
}
