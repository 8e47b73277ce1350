package entracte.cue;

import entracte.rig.Warmth;
import java.util.ArrayList;
import java.util.List;

/** What a sheet says before anybody touches the rig. */
final class SetUpCautions {
  private static final String JUMPERS =
      "Jumpers first: power off and mains plug out before a panel is opened, and only by someone"
          + " able to. No jumper is touched once the show has begun.";

  private static final List<String> ALWAYS =
      List.of(
          "Main level down before any plug moves: pops harm ears and loudspeakers.",
          "Raise levels slowly, headphones too. Loud sound harms hearing for good.",
          "Keep cords off the floor and drinks off the case.",
          "Mains work is for a licensed electrician under local code.");

  private SetUpCautions() {}

  static List<String> of(boolean jumpers, Warmth warmth) {
    List<String> cautions = new ArrayList<>();
    if (jumpers) {
      cautions.add(JUMPERS);
    }
    cautions.addAll(ALWAYS);
    cautions.addAll(warm(warmth));
    return cautions;
  }

  private static List<String> warm(Warmth warmth) {
    List<String> lines = new ArrayList<>();
    warmth
        .warmUpSeconds()
        .ifPresent(
            s ->
                lines.add(
                    "Switch the rig on first: its tuning holds about "
                        + TimeText.of(s)
                        + " later, so tune last."));
    warmth
        .tuneAgainSeconds()
        .ifPresent(
            s ->
                lines.add(
                    "Tune again about every "
                        + TimeText.of(s)
                        + ", in a changeover and unheard; sooner where the stage grows warm or"
                        + " cold."));
    return lines;
  }
}
