package entracte.cue;

import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Cord;
import entracte.rig.Module;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The voices of a song, for listening to one after the other. A voice begins at a module with a
 * pitch input and goes by the shortest way along the cords to where no cord leads on.
 */
final class Voices {
  private final SongPlan song;

  private Voices(SongPlan song) {
    this.song = song;
  }

  /** One line for each voice, left to right: {@code osc 2 plays bass: filter 1, amp 1}. */
  static List<String> of(SongPlan song) {
    Voices voices = new Voices(song);
    return song.casting().stream()
        .filter(cast -> PitchPaths.hasPitchInput(cast.module()))
        .sorted(Comparator.comparing(cast -> Spot.of(cast.module()), HandOrder.SPOTS))
        .map(voices::line)
        .toList();
  }

  private String line(CastAs cast) {
    List<String> way = wayOut(cast.module()).stream().map(Module::name).toList();
    String plays = Wording.plays(cast.module(), cast.role());
    return way.isEmpty() ? plays : plays + ", through " + String.join(", ", way);
  }

  /** The modules after {@code from}, breadth first, to the nearest that has no cord going on. */
  private List<Module> wayOut(Module from) {
    Map<Module, Module> before = new HashMap<>();
    Deque<Module> next = new ArrayDeque<>(List.of(from));
    before.put(from, from);
    while (!next.isEmpty()) {
      Module here = next.remove();
      List<Module> onward = onward(here);
      if (onward.isEmpty()) {
        return back(before, from, here);
      }
      for (Module sink : onward) {
        if (before.putIfAbsent(sink, here) == null) {
          next.add(sink);
        }
      }
    }
    return List.of();
  }

  private List<Module> onward(Module module) {
    return song.required().stream()
        .map(PluggedCord::cord)
        .filter(cord -> cord.source().module().equals(module))
        .map(Cord::sink)
        .map(sink -> sink.module())
        .distinct()
        .toList();
  }

  private static List<Module> back(Map<Module, Module> before, Module from, Module last) {
    List<Module> way = new ArrayList<>();
    for (Module here = last; !here.equals(from); here = before.get(here)) {
      way.add(here);
    }
    Collections.reverse(way);
    return way;
  }
}
