package entracte.cue;

import entracte.plan.PluggedCord;
import entracte.rig.Cord;

/** The changes that come with cords. */
final class Changes {
  private Changes() {}

  static Change plugged(PluggedCord cord) {
    return new Change.Plugged(
        cord.cord().source().toString(), cord.cord().sink().toString(), cord.lengthCm());
  }

  static Change pulled(Cord cord) {
    return new Change.Pulled(cord.source().toString(), cord.sink().toString());
  }
}
