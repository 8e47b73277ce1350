package entracte.cue;

import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.rig.Cord;
import entracte.rig.Module;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which modules of a song are heard: those whose cords lead out of the rig in the end. What shakes
 * another module is heard through it. Where no cord of the song comes to a way out, nobody has
 * drawn it, and all are taken for heard.
 */
final class Audible {
  private final Set<Module> heard = new HashSet<>();

  Audible(SongPlan song) {
    List<Cord> cords = song.required().stream().map(PluggedCord::cord).toList();
    cords.stream()
        .map(cord -> cord.sink().module())
        .filter(module -> module.kind().isOutlet())
        .forEach(heard::add);
    boolean grows = !heard.isEmpty();
    while (grows) {
      grows = false;
      for (Cord cord : cords) {
        grows |= heard.contains(cord.sink().module()) && heard.add(cord.source().module());
      }
    }
  }

  boolean hears(Module module) {
    return heard.isEmpty() || heard.contains(module);
  }
}
