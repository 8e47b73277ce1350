package entracte.cue;

import entracte.rig.Warmth;
import java.util.ArrayList;
import java.util.List;

/**
 * What a sheet says before anybody touches the rig: for a set-up, or where it begins in mid-set.
 */
final class SetUpCautions {
  private static final String JUMPERS =
      "Jumpers first: power off and mains plug out before a panel is opened, and only by someone"
          + " able to. ";

  private static final String NO_JUMPER = "No jumper is touched once the show has begun.";

  private static final String POWER =
      "Switch on with the main level down: the rig first, amplifiers and loudspeakers last. Switch"
          + " off the other way round: a thump harms ears and loudspeakers.";

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
      cautions.add(JUMPERS + NO_JUMPER);
    }
    cautions.add(POWER);
    cautions.addAll(ALWAYS);
    warmth
        .warmUpSeconds()
        .ifPresent(
            s ->
                cautions.add(
                    "Its tuning holds from about "
                        + TimeText.of(s)
                        + " after the rig is switched on, so tune last."));
    cautions.addAll(again(warmth));
    return cautions;
  }

  /** Where the rig is on already and somebody is listening. */
  static List<String> inMidSet(boolean jumpers, Warmth warmth) {
    List<String> cautions = new ArrayList<>(ALWAYS);
    if (jumpers) {
      cautions.add(NO_JUMPER);
    }
    cautions.addAll(again(warmth));
    return cautions;
  }

  private static List<String> again(Warmth warmth) {
    return warmth.tuneAgainSeconds().stream()
        .mapToObj(
            s ->
                "Tune again about every "
                    + TimeText.of(s)
                    + ", in a changeover and unheard; sooner where the stage grows warm or cold.")
        .toList();
  }
}
