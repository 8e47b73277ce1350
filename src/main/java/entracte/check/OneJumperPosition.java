package entracte.check;

import entracte.check.Part.CastRole;
import entracte.check.Part.JumperNeed;
import entracte.rig.Module;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One position of every jumper serves all songs. All combinations of the positions wanted are
 * tried; for each, a song can be cast if a matching of its roles to modules that stand right is
 * complete. Exact while combinations times songs stay within {@link #MOST_MATCHINGS}; beyond, the
 * planner finds out. Memory is a bit for each of these. The songs reported are a smallest set that
 * cannot be served together, if it can be found soon, see {@link FewestSongs}; of several such, two
 * songs that name the very same module, since everyone sees why.
 */
final class OneJumperPosition {
  private static final int MOST_MATCHINGS = 100_000;

  /** One jumper of one module. */
  private record JumperIn(Module module, String jumper) {}

  /** What of a song matters here; songs alike in it are tried once. */
  private record Demand(List<CastRole> roles, List<JumperNeed> jumpers) {}

  private final RigIndex rig;
  private final Findings findings;
  private final Map<Demand, Reading> readings = new LinkedHashMap<>();

  OneJumperPosition(RigIndex rig, Findings findings) {
    this.rig = rig;
    this.findings = findings;
  }

  /** Takes a song, for which there are modules enough, into account. */
  void add(Reading reading) {
    Part part = reading.part().orElseThrow();
    if (!part.jumpers().isEmpty()) {
      readings.putIfAbsent(new Demand(part.roles(), part.jumpers()), reading);
    }
  }

  void check() {
    Map<JumperIn, List<String>> wanted = wanted();
    long combinations = 1;
    for (List<String> positions : wanted.values()) {
      combinations = Math.min(combinations * positions.size(), MOST_MATCHINGS + 1L);
    }
    if (combinations * readings.size() > MOST_MATCHINGS) {
      return;
    }
    List<BitSet> failing = new ArrayList<>();
    for (int number = 0; number < combinations; number++) {
      BitSet songs = failing(combination(number, wanted));
      if (songs.isEmpty()) {
        return;
      }
      failing.add(songs);
    }
    new JumperDispute(cause(failing)).report(findings);
  }

  /** The positions that some song may want of each jumper, in a fixed order. */
  private Map<JumperIn, List<String>> wanted() {
    Map<JumperIn, Set<String>> positions = new LinkedHashMap<>();
    for (Demand demand : readings.keySet()) {
      for (JumperNeed need : demand.jumpers()) {
        for (Module module : demand.roles().get(need.role()).candidates()) {
          positions
              .computeIfAbsent(new JumperIn(module, need.jumper()), j -> new LinkedHashSet<>())
              .add(need.position());
        }
      }
    }
    Map<JumperIn, List<String>> lists = new LinkedHashMap<>();
    positions.forEach((jumper, names) -> lists.put(jumper, List.copyOf(names)));
    return lists;
  }

  private static Map<JumperIn, String> combination(int number, Map<JumperIn, List<String>> wanted) {
    Map<JumperIn, String> set = new HashMap<>();
    int rest = number;
    for (Map.Entry<JumperIn, List<String>> jumper : wanted.entrySet()) {
      List<String> positions = jumper.getValue();
      set.put(jumper.getKey(), positions.get(rest % positions.size()));
      rest /= positions.size();
    }
    return set;
  }

  /** The songs that cannot be cast with these positions. */
  private BitSet failing(Map<JumperIn, String> set) {
    BitSet songs = new BitSet();
    int song = 0;
    for (Demand demand : readings.keySet()) {
      songs.set(song++, !canBeCast(demand, set));
    }
    return songs;
  }

  private boolean canBeCast(Demand demand, Map<JumperIn, String> set) {
    List<int[]> options = new ArrayList<>();
    for (int role = 0; role < demand.roles().size(); role++) {
      int number = role;
      options.add(
          demand.roles().get(role).candidates().stream()
              .filter(module -> serves(module, number, demand, set))
              .mapToInt(rig::number)
              .toArray());
    }
    return new Matching(options, rig.modules().size()).complete();
  }

  private static boolean serves(Module module, int role, Demand demand, Map<JumperIn, String> set) {
    return demand.jumpers().stream()
        .filter(need -> need.role() == role)
        .allMatch(need -> need.position().equals(set.get(new JumperIn(module, need.jumper()))));
  }

  /** Two songs that want one jumper of the only module that will do for both in two ways. */
  private Optional<List<Reading>> pinnedInTwoWays() {
    Map<JumperIn, Map<String, Reading>> wishes = new HashMap<>();
    for (Reading reading : readings.values()) {
      Part part = reading.part().orElseThrow();
      for (JumperNeed need : part.jumpers()) {
        List<Module> players = part.roles().get(need.role()).candidates();
        if (players.size() == 1) {
          Map<String, Reading> first =
              wishes.computeIfAbsent(
                  new JumperIn(players.get(0), need.jumper()), j -> new LinkedHashMap<>());
          first.putIfAbsent(need.position(), reading);
          if (first.size() > 1) {
            return Optional.of(List.copyOf(first.values()));
          }
        }
      }
    }
    return Optional.empty();
  }

  /** No song clashes with itself, so two that are pinned against each other are fewest. */
  private List<Reading> cause(List<BitSet> failing) {
    List<Reading> all = List.copyOf(readings.values());
    return pinnedInTwoWays()
        .orElseGet(
            () -> new FewestSongs(failing, all.size()).find().stream().mapToObj(all::get).toList());
  }
}
