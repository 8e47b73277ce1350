package entracte.cue;

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

  static List<String> of(boolean jumpers) {
    List<String> cautions = new ArrayList<>();
    if (jumpers) {
      cautions.add(JUMPERS);
    }
    cautions.addAll(ALWAYS);
    return cautions;
  }
}
