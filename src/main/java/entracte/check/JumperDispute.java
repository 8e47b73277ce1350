package entracte.check;

import entracte.check.Part.JumperNeed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Songs that no one position of every jumper serves together, in words. */
final class JumperDispute {
  private final List<Reading> songs;
  private final Set<String> disputed = new LinkedHashSet<>();

  /**
   * @param songs in the order of the set, none of which could be spared
   */
  JumperDispute(List<Reading> songs) {
    this.songs = songs;
    Map<String, String> first = new LinkedHashMap<>();
    for (Reading song : songs) {
      for (JumperNeed need : needs(song)) {
        if (!first.computeIfAbsent(need.jumper(), j -> need.position()).equals(need.position())) {
          disputed.add(need.jumper());
        }
      }
    }
  }

  private static List<JumperNeed> needs(Reading song) {
    return song.part().orElseThrow().jumpers();
  }

  /** Reports at the last song's setting of a jumper that is wanted in two ways. */
  void report(Findings findings) {
    List<String> wishes = new ArrayList<>();
    for (Reading song : songs) {
      Set<String> wants = new LinkedHashSet<>();
      needs(song).stream()
          .filter(need -> disputed.contains(need.jumper()))
          .forEach(n -> wants.add("\"%s\" at \"%s\"".formatted(n.jumper(), n.position())));
      wishes.add(
          "\"%s\" wants %s".formatted(song.song().name(), Quoted.joined(List.copyOf(wants))));
    }
    Reading last = songs.get(songs.size() - 1);
    JumperNeed need =
        needs(last).stream().filter(n -> disputed.contains(n.jumper())).findFirst().orElseThrow();
    findings.error(
        last.drafts().get(need.role()).settingOf(need.jumper()),
        "no setting of the jumpers serves the whole set: " + String.join("; ", wishes),
        "A jumper is set once, before the show, power off and unplugged: change a patch, or let"
            + " another module play.");
  }
}
