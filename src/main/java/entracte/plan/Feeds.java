package entracte.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * The cords that feed each multiple, in the order of their uses. An idle multiple may have one such
 * cord at most: two would join two outputs.
 */
final class Feeds {
  private final CordLedger cords;

  /** The uses that feed each multiple, in the order of the songs. */
  private final List<List<Integer>> feeding = new ArrayList<>();

  Feeds(CordLedger cords, RigIndex rig) {
    this.cords = cords;
    rig.modules.forEach(m -> feeding.add(new ArrayList<>()));
    for (int use = 0; use < cords.columnOf.length; use++) {
      if (cords.sourceOf[use] != CordLedger.NOTHING && rig.tapSocket[cords.sinkOf[use]]) {
        feeding.get(rig.moduleOfSocket[cords.sinkOf[use]]).add(use);
      }
    }
  }

  /**
   * Marks the removal of every cord that is still there when the next to feed its multiple comes;
   * returns whether there was any. Marking it can always help: it may go right after its use.
   */
  boolean clash(int[] time, boolean[] early) {
    boolean any = false;
    for (List<Integer> uses : feeding) {
      for (int i = 1; i < uses.size(); i++) {
        int removal = PlugPaths.removal(uses.get(i - 1));
        int addition = PlugPaths.addition(uses.get(i));
        boolean bothHappen =
            cords.removeTo[uses.get(i - 1)] != 0 && cords.addFrom[uses.get(i)] != 0;
        if (bothHappen && time[removal] > time[addition] && !early[removal]) {
          early[removal] = true;
          any = true;
        }
      }
    }
    return any;
  }
}
