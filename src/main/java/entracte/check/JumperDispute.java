package entracte.check;

import entracte.check.Part.JumperNeed;
import entracte.rig.Module;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Songs that no one position of every jumper serves together, in words. */
final class JumperDispute {
  /** One song's wish for a jumper of whichever module plays a role. */
  private record Wish(Reading song, JumperNeed need) {
    private Part.CastRole role() {
      return song.part().orElseThrow().roles().get(need.role());
    }

    /** The very jumper, where only one module will do; else this wish alone. */
    Object veryJumper() {
      List<Module> players = role().candidates();
      return players.size() == 1 ? List.of(players.get(0), need.jumper()) : this;
    }

    /** Whose jumper: the module where only one will do, else the role. */
    String whose() {
      List<Module> players = role().candidates();
      return players.size() == 1 ? players.get(0).name() : role().name();
    }
  }

  /** What the songs disagree about, in the order of the set. */
  private final List<Wish> wishes;

  /**
   * @param songs in the order of the set, none of which could be spared
   */
  JumperDispute(List<Reading> songs) {
    List<Wish> all = new ArrayList<>();
    for (Reading song : songs) {
      song.part().orElseThrow().jumpers().forEach(need -> all.add(new Wish(song, need)));
    }
    // One jumper wanted in two ways is the plainest reason, and what else they want beside it.
    List<Wish> plainest = disputed(all, Wish::veryJumper);
    wishes = plainest.isEmpty() ? disputed(all, wish -> wish.need().jumper()) : plainest;
  }

  private static List<Wish> disputed(List<Wish> all, Function<Wish, Object> jumper) {
    Map<Object, Set<String>> positions = new HashMap<>();
    for (Wish wish : all) {
      positions
          .computeIfAbsent(jumper.apply(wish), j -> new HashSet<>())
          .add(wish.need().position());
    }
    return all.stream().filter(wish -> positions.get(jumper.apply(wish)).size() > 1).toList();
  }

  /** Reports at the last song's setting of a jumper that is wanted in two ways. */
  void report(Findings findings) {
    Map<Reading, List<Wish>> bySong = new LinkedHashMap<>();
    wishes.forEach(w -> bySong.computeIfAbsent(w.song(), s -> new ArrayList<>()).add(w));
    List<String> all = new ArrayList<>();
    bySong.forEach(
        (song, wants) -> all.add("\"" + song.song().name() + "\" wants " + inWords(wants)));
    Reading last = wishes.get(wishes.size() - 1).song();
    JumperNeed need = bySong.get(last).get(0).need();
    findings.error(
        last.drafts().get(need.role()).settingOf(need.jumper()),
        "no setting of the jumpers serves the whole set: " + String.join("; ", all),
        "A jumper is set once, before the show, power off and unplugged: change a patch, or let"
            + " another module play.");
  }

  /** How many modules a song takes may be all that is wrong, so each is named. */
  private static String inWords(List<Wish> wants) {
    Map<String, List<String>> whose = new LinkedHashMap<>();
    for (Wish wish : wants) {
      String what = "\"%s\" at \"%s\"".formatted(wish.need().jumper(), wish.need().position());
      whose.computeIfAbsent(what, w -> new ArrayList<>()).add(wish.whose());
    }
    List<String> words = new ArrayList<>();
    whose.forEach((what, names) -> words.add(what + " for " + Quoted.list(names)));
    return Quoted.joined(words);
  }
}
