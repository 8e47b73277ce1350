package entracte.print;

import entracte.cue.Cue;
import entracte.cue.Step;
import entracte.cue.Touch;
import java.util.ArrayList;
import java.util.List;

/**
 * One place of a move in the picture.
 *
 * @param label the number of its step, with a letter if the step has more places than one
 */
record Place(String label, Touch touch) {
  /** The jack or control without its module; empty where it is the module itself. */
  String name() {
    String module = touch.spot().module();
    String name = touch.name();
    if (name.equals(module)) {
      return "";
    }
    return name.startsWith(module + " ") ? name.substring(module.length() + 1) : name;
  }

  /** The places of all steps of a cue, in the order of the hands; steps count from 1. */
  static List<Place> of(Cue cue) {
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < cue.steps().size(); i++) {
      Step step = cue.steps().get(i);
      for (int j = 0; j < step.touches().size(); j++) {
        String letter = step.touches().size() > 1 ? Character.toString('a' + j) : "";
        Touch touch = step.touches().get(j);
        places.add(new Place((i + 1) + letter, touch));
      }
    }
    return places;
  }
}
