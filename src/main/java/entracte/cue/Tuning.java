package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.Module;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which modules want tuning before a song: those that play in it with a cord in an input named for
 * pitch, and have since they last played so got another pitch cord, share their pitch with more or
 * fewer inputs (a passive multiple loads its source a little), or another octave, range or tune
 * setting. A module that has not played yet is tuned before its first song. What shakes a pitch or
 * beats by itself has no cord there, and nobody tunes it.
 *
 * <p>Ask for the songs in their order, each once.
 */
final class Tuning {
  private static final Set<String> TUNING_WORDS =
      Set.of(
          "tune", "tuning", "fine", "coarse", "octave", "range", "footage", "transpose", "pitch");

  private final Map<Module, Ear> lastHeard = new HashMap<>();
  private final Set<Module> played = new HashSet<>();

  /** All that a module's pitch hangs on. */
  private record Ear(Set<String> cords, Set<String> loads, Map<String, String> settings) {}

  /** The tuning steps before a song, left to right. */
  List<Step> before(SongPlan song, int number) {
    PitchPaths paths = new PitchPaths(song);
    List<Step> steps = new ArrayList<>();
    for (CastAs cast : song.casting()) {
      boolean first = played.add(cast.module());
      if (!paths.into(cast.module()).isEmpty()) {
        Ear now = listen(song, cast.module(), paths);
        Optional<Ear> before = Optional.ofNullable(lastHeard.put(cast.module(), now));
        String fresh = first ? "plays for the first time" : "its first pitch cord";
        String reason = before.map(ear -> changes(ear, now)).orElse(fresh);
        if (!reason.isEmpty()) {
          double size = Extent.ofTuning(cast.module(), song);
          steps.add(ChangeoverSteps.tune(cast.module(), reason, size, number));
        }
      }
    }
    steps.sort(java.util.Comparator.comparing(step -> step.reach().get(0), HandOrder.SPOTS));
    return steps;
  }

  private static Ear listen(SongPlan song, Module module, PitchPaths paths) {
    Set<String> cords = new TreeSet<>();
    Set<String> loads = new TreeSet<>();
    for (PitchPaths.Path path : paths.into(module)) {
      cords.add(path.cord().toString());
      loads.add(path.root() + " feeds " + path.load());
    }
    Map<String, String> settings = new TreeMap<>();
    for (Control control : module.controls()) {
      if (isTuning(control) && song.positions().containsKey(control)) {
        settings.put(control.name(), song.positions().get(control).toString());
      }
    }
    return new Ear(cords, loads, settings);
  }

  private static boolean isTuning(Control control) {
    String name = control.name().toLowerCase(java.util.Locale.ROOT);
    return List.of(name.split("\\W+")).stream().anyMatch(TUNING_WORDS::contains);
  }

  private static String changes(Ear before, Ear now) {
    List<String> changes = new ArrayList<>();
    if (!before.cords().equals(now.cords())) {
      changes.add("another pitch cord");
    } else if (!before.loads().equals(now.loads())) {
      changes.add("its pitch is shared otherwise");
    }
    Set<String> names = new TreeSet<>(before.settings().keySet());
    names.addAll(now.settings().keySet());
    for (String name : names) {
      if (!java.util.Objects.equals(before.settings().get(name), now.settings().get(name))) {
        changes.add(name + " changed");
      }
    }
    return String.join(", ", changes);
  }
}
