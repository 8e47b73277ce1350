package entracte.check;

import entracte.finding.Finding;
import entracte.finding.Place;
import entracte.finding.Places;
import entracte.rig.Rig;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.List;

/** Makes sets for tests, and playable ones that have passed the check. */
public final class SetBuilder {
  private SetBuilder() {}

  public static SetList set(Rig rig, Song... songs) {
    return new SetList("test set", rig, List.of(songs), true);
  }

  public static Checked check(SetList set) {
    return Checker.check(set, new Places(Place.wholeFile("set.yaml")));
  }

  public static Checked check(Rig rig, Song... songs) {
    return check(set(rig, songs));
  }

  /** The set as the planner takes it; throws if the check finds an error. */
  public static PlayableSet playable(SetList set) {
    Checked checked = check(set);
    return checked
        .set()
        .orElseThrow(() -> new AssertionError("not playable: " + say(checked.findings())));
  }

  public static PlayableSet playable(Rig rig, Song... songs) {
    return playable(set(rig, songs));
  }

  /** Each finding as {@code error: message / advice}. */
  public static List<String> say(List<Finding> findings) {
    return findings.stream()
        .map(
            f ->
                f.severity().word()
                    + ": "
                    + f.message()
                    + (f.advice().isEmpty() ? "" : " / " + f.advice()))
        .toList();
  }
}
