package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.Module;
import java.util.ArrayList;
import java.util.Comparator;
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
 * beats by itself has no cord there, and nobody tunes it unless its patch says to what; nor what is
 * not heard. What a patch tunes against another module is tuned after it, and again if that one was
 * tuned since.
 *
 * <p>Ask for the songs in their order, each once.
 */
final class Tuning {
  private static final Set<String> TUNING_WORDS =
      Set.of(
          "tune", "tuning", "fine", "coarse", "octave", "range", "footage", "transpose", "pitch");

  static final Comparator<Module> IN_HAND_ORDER = Comparator.comparing(Spot::of, HandOrder.SPOTS);

  private final Map<Module, Ear> lastHeard = new HashMap<>();
  private final Map<Module, Integer> lastTuned = new HashMap<>();
  private final Set<Module> played = new HashSet<>();

  /** All that a module's pitch hangs on. */
  private record Ear(
      Set<String> cords, Map<String, Long> loads, Map<String, String> settings, String wish) {}

  /**
   * What the ear does before a song.
   *
   * @param steps in the order of tuning: left to right, but none before its reference
   * @param tuned the modules of those steps
   * @param trusted the modules beside them that are still in tune as far as the patch can tell
   */
  record Ahead(List<Step> steps, Set<Module> tuned, List<Module> trusted) {}

  /** What is to be tuned before a song, and what is not. */
  Ahead before(SongPlan song, int number) {
    PitchPaths paths = new PitchPaths(song);
    TuneWishes wishes = new TuneWishes(song);
    Set<Module> tuned = new HashSet<>();
    List<Step> steps = new ArrayList<>();
    List<Module> trusted = new ArrayList<>();
    Set<Module> newcomers = newcomers(song);
    for (Module module : wishes.tuned(song, paths, IN_HAND_ORDER)) {
      Ear now = listen(song, module, paths, wishes);
      Optional<Ear> before = Optional.ofNullable(lastHeard.put(module, now));
      String reason = before.map(ear -> changes(ear, now)).orElse(fresh(newcomers, module, now));
      Optional<Module> moved =
          wishes.reference(module).filter(other -> lastTuned(other) > lastTuned(module));
      if (reason.isEmpty() && moved.isPresent()) {
        reason = moved.get().name() + " is tuned anew";
      }
      if (reason.isEmpty()) {
        trusted.add(module);
      } else {
        tuned.add(module);
        lastTuned.put(module, number);
        double size = Extent.ofTuning(module, song);
        steps.add(ChangeoverSteps.tune(module, wishes.words(module), reason, size, number));
      }
    }
    return new Ahead(steps, tuned, steps.isEmpty() ? List.of() : trusted);
  }

  /** The song before which it was tuned last; less than any if it was not. */
  private int lastTuned(Module module) {
    return lastTuned.getOrDefault(module, -1);
  }

  /** Those that have not played before. */
  private Set<Module> newcomers(SongPlan song) {
    Set<Module> newcomers = new HashSet<>();
    song.casting().stream().map(CastAs::module).filter(played::add).forEach(newcomers::add);
    return newcomers;
  }

  private static String fresh(Set<Module> newcomers, Module module, Ear now) {
    String later = now.cords().isEmpty() ? "tuned for the first time" : "its first pitch cord";
    return newcomers.contains(module) ? "plays for the first time" : later;
  }

  private static Ear listen(SongPlan song, Module module, PitchPaths paths, TuneWishes wishes) {
    Set<String> cords = new TreeSet<>();
    Map<String, Long> loads = new TreeMap<>();
    for (PitchPaths.Path path : paths.into(module)) {
      cords.add(path.cord().toString());
      loads.put(Wording.name(path.root()), path.load());
    }
    Map<String, String> settings = new TreeMap<>();
    for (Control control : module.controls()) {
      if (isTuning(control) && song.positions().containsKey(control)) {
        settings.put(control.name(), song.positions().get(control).toString());
      }
    }
    return new Ear(cords, loads, settings, wishes.words(module));
  }

  /** {@code keys pitch 1 feeds 2 inputs now, 1 before}. */
  private static void share(String root, Long before, long now, List<String> changes) {
    if (before != null && before != now) {
      String inputs = now == 1 ? " input now, " : " inputs now, ";
      changes.add(root + " feeds " + now + inputs + before + " before");
    }
  }

  private static boolean isTuning(Control control) {
    String name = control.name().toLowerCase(java.util.Locale.ROOT);
    return List.of(name.split("\\W+")).stream().anyMatch(TUNING_WORDS::contains);
  }

  private static String changes(Ear before, Ear now) {
    List<String> changes = new ArrayList<>();
    if (!before.cords().equals(now.cords())) {
      changes.add(now.cords().isEmpty() ? "no key moves it now" : "another pitch cord");
    } else if (!before.loads().equals(now.loads())) {
      now.loads().forEach((root, load) -> share(root, before.loads().get(root), load, changes));
    }
    Set<String> names = new TreeSet<>(before.settings().keySet());
    names.addAll(now.settings().keySet());
    for (String name : names) {
      if (!java.util.Objects.equals(before.settings().get(name), now.settings().get(name))) {
        changes.add(name + " changed");
      }
    }
    if (!before.wish().equals(now.wish())) {
      changes.add("another target");
    }
    return String.join(", ", changes);
  }
}
