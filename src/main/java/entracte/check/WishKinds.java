package entracte.check;

import entracte.rig.Direction;
import entracte.rig.Group;
import entracte.rig.Kind;
import entracte.rig.NameWords;
import entracte.rig.PitchControl;
import entracte.rig.Signal;
import entracte.rig.Toggle;
import java.util.stream.Stream;

/** Which kinds can answer to what a patch wishes for the ear. */
final class WishKinds {
  static final String NOTHING_TO_TUNE =
      "nothing to tune: no pitch input, no octave, no tune and no cutoff";
  static final String NO_PITCH = "no pitch input, so no key moves it";
  static final String NOTHING_TO_DRIVE =
      "nothing to drive with: no gain step, and no knob for gain, drive or level";

  /** A filter that is made to sing is tuned by its cutoff. */
  private static final String CUTOFF = "cutoff";

  private WishKinds() {}

  static boolean canBeTuned(Kind kind) {
    return hasPitch(kind)
        || controls(kind)
            .anyMatch(
                name ->
                    PitchControl.isOctave(name)
                        || PitchControl.isTune(name)
                        || name.equals(CUTOFF));
  }

  static boolean hasPitch(Kind kind) {
    return kind.groups().stream()
        .flatMap(group -> group.jacks().stream())
        .filter(jack -> jack.direction() == Direction.IN)
        .anyMatch(
            jack ->
                kind.electrics()
                    .signal(jack.name())
                    .map(Signal.PITCH::equals)
                    .orElse(Pitched.isPitch(jack.name())));
  }

  static boolean canDrive(Kind kind) {
    return controls(kind)
        .anyMatch(name -> NameWords.sayLoudness(name) || Toggle.of(kind, name).hasGain());
  }

  private static Stream<String> controls(Kind kind) {
    return kind.groups().stream().flatMap(WishKinds::controls);
  }

  private static Stream<String> controls(Group group) {
    return Stream.of(
            group.knobs().stream().map(knob -> knob.name()),
            group.switches().stream().map(each -> each.name()))
        .flatMap(names -> names);
  }
}
