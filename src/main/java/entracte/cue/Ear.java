package entracte.cue;

import entracte.plan.SongPlan;
import entracte.rig.Control;
import entracte.rig.Module;
import entracte.rig.NameWords;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * All that the pitch of a module hangs on in a song.
 *
 * @param cords those in its pitch inputs
 * @param loads by the jack that a pitch comes from: how many inputs share it
 * @param settings the octave, range and tune settings
 * @param wish the pitch that the patch wants it tuned to
 */
public record Ear(
    Set<String> cords, Map<String, Long> loads, Map<String, String> settings, String wish) {
  private static final Set<String> TUNING_WORDS =
      Set.of(
          "tune", "tuning", "fine", "coarse", "octave", "range", "footage", "transpose", "pitch");

  public Ear {
    cords = Collections.unmodifiableSet(new TreeSet<>(cords));
    loads = Collections.unmodifiableMap(new TreeMap<>(loads));
    settings = Collections.unmodifiableMap(new TreeMap<>(settings));
  }

  static Ear of(SongPlan song, Module module, PitchPaths paths, TuneWishes wishes) {
    Set<String> cords = new HashSet<>();
    Map<String, Long> loads = new HashMap<>();
    for (PitchPaths.Path path : paths.into(module)) {
      cords.add(path.cord().toString());
      loads.put(Wording.name(path.root()), path.load());
    }
    Map<String, String> settings = new HashMap<>();
    for (Control control : module.controls()) {
      if (isTuning(control) && song.positions().containsKey(control)) {
        settings.put(control.name(), song.positions().get(control).toString());
      }
    }
    return new Ear(cords, loads, settings, wishes.pitch(module));
  }

  /** {@code keys pitch 1 feeds 2 inputs now, 1 before}. */
  private static void share(String root, Long before, long now, List<String> changes) {
    if (before != null && before != now) {
      String inputs = now == 1 ? " input now, " : " inputs now, ";
      changes.add(root + " feeds " + now + inputs + before + " before");
    }
  }

  /** Whether the pitch of its module hangs on it. */
  static boolean isTuning(Control control) {
    return NameWords.say(control.name(), TUNING_WORDS);
  }

  /** What is otherwise since {@code before}; empty if nothing is. */
  String changesSince(Ear before) {
    List<String> changes = new ArrayList<>();
    if (!before.cords().equals(cords)) {
      changes.add(cords.isEmpty() ? "no key moves it now" : "another pitch cord");
    } else if (!before.loads().equals(loads)) {
      loads.forEach((root, load) -> share(root, before.loads().get(root), load, changes));
    }
    Set<String> names = new TreeSet<>(before.settings().keySet());
    names.addAll(settings.keySet());
    for (String name : names) {
      if (!Objects.equals(before.settings().get(name), settings.get(name))) {
        changes.add(name + " changed");
      }
    }
    if (!before.wish().equals(wish)) {
      changes.add("another target");
    }
    return String.join(", ", changes);
  }
}
