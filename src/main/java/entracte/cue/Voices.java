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
import java.util.stream.Stream;

/**
 * The voices of a song, for listening to one after the other. A voice begins at a module with a
 * pitch input and goes by the shortest way along the cords to where no cord leads on.
 */
final class Voices {
  private final SongPlan song;

  private Voices(SongPlan song) {
    this.song = song;
  }

  /**
   * One line for each voice, left to right, from the hand to the loudspeaker: {@code osc 2 plays
   * bass, left hand by keys pitch, slew 1, then filter 1, amp 1}.
   */
  static List<String> of(SongPlan song) {
    Voices voices = new Voices(song);
    return voices.starts().map(voices::line).toList();
  }

  /** The modules of each voice, in the order of the signal, the one that sounds first. */
  static List<List<Module>> ways(SongPlan song) {
    Voices voices = new Voices(song);
    return voices
        .starts()
        .map(
            cast ->
                Stream.concat(Stream.of(cast.module()), voices.wayOut(cast.module()).stream())
                    .toList())
        .toList();
  }

  /** What only moves another cannot be listened to alone. */
  private Stream<CastAs> starts() {
    Audible audible = new Audible(song);
    return song.casting().stream()
        .filter(cast -> PitchPaths.hasPitchInput(cast.module()))
        .filter(cast -> audible.hearsItself(cast.module()))
        .sorted(Comparator.comparing(cast -> Spot.of(cast.module()), HandOrder.SPOTS));
  }

  private String line(CastAs cast) {
    String way = list(", through ", wayOut(cast.module()));
    return Wording.plays(cast.module(), cast.role()) + from(cast.module()) + way;
  }

  /** Where its pitch comes from, with who plays it and what it goes through. */
  private String from(Module module) {
    PitchPaths paths = new PitchPaths(song);
    return paths.into(module).stream()
        .findFirst()
        .map(path -> PitchRoute.into(path.cord(), song, paths))
        .map(
            route ->
                ", from "
                    + Wording.name(route.root())
                    + Playing.player(route.root(), song).map(who -> " (" + who + ")").orElse("")
                    + list(" by way of ", route.through()))
        .orElse(", which no key moves");
  }

  private static String list(String word, List<Module> modules) {
    List<String> names = modules.stream().map(Module::name).toList();
    return names.isEmpty() ? "" : word + String.join(", ", names);
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
