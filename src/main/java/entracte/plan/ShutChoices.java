package entracte.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Which channels a proof must think of shutting. A channel is worth shutting in a song only for a
 * cord that waits in it:
 *
 * <ul>
 *   <li>one used before, which has been able to wait so far (a <em>held</em> cord);
 *   <li>or one that is to come, put in early: so once a role takes the channel, the songs before in
 *       which it could have been shut, the latest first.
 * </ul>
 */
final class ShutChoices {
  private final RigIndex rig;
  private final Layout layout;
  private final CordLedger cords;

  ShutChoices(Layout layout) {
    this.layout = layout;
    rig = layout.rig;
    cords = layout.cords;
  }

  /** The channels of modules that play in a song which no role names. */
  List<Integer> openTo(int song) {
    List<Integer> strips = new ArrayList<>();
    for (int module : layout.casting.module[song]) {
      int end = rig.endOfModule(module);
      for (int strip = rig.firstStrip[module][0]; strip < end; strip++) {
        if (rig.closedControls[strip].length > 0 && !layout.isNamed(song, strip)) {
          strips.add(strip);
        }
      }
    }
    return strips;
  }

  /** Whether a cord used before could still wait in a channel in {@code song}, were it shut. */
  boolean holds(int song, int strip) {
    int column = song + 1;
    for (int s = rig.firstSocketOfStrip[strip]; s < rig.firstSocketOfStrip[strip + 1]; s++) {
      int use = cords.previousUse(s, column);
      if (use >= 0
          && cords.sinkOf[use] == s
          && cords.previousBlocked(s, column) <= cords.columnOf[use]
          && cords.use(cords.sourceOf[use], column) < 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * The songs before {@code song}, latest first, in which a channel taken there would have to be
   * shut for a cord to wait in it ever longer.
   */
  List<Integer> before(int song, int strip) {
    List<Integer> songs = new ArrayList<>();
    int first = rig.firstSocketOfStrip[strip];
    for (int s = first; s < rig.firstSocketOfStrip[strip + 1]; s++) {
      int earlier = song;
      while (earlier > 0) {
        earlier = cords.previousBlocked(s, earlier + 1) - 1;
        if (earlier < 0 || layout.isNamed(earlier, strip)) {
          break;
        }
        if (!songs.contains(earlier)) {
          songs.add(earlier);
        }
      }
    }
    return songs;
  }
}
