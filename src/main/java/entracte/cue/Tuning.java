package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Module;
import entracte.rig.Rig;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which modules want tuning before a song: those that play in it with a cord in an input named for
 * pitch, and have since they last played so got another pitch cord, share their pitch with more or
 * fewer inputs (a passive multiple loads its source a little), or another octave, range or tune
 * setting. A module that has not played yet is tuned before its first song. What shakes a pitch or
 * beats by itself has no cord there, and nobody tunes it unless its patch says to what; nor what is
 * not heard. What a patch tunes against another module is tuned after it, and again if that one was
 * tuned since.
 *
 * <p>In the set-up nobody waits. What hangs there already as its first song wants it, and is not
 * touched till then, is tuned at once.
 *
 * <p>Where the ear has been at work already on that night, what it did counts: what stands tuned
 * and was not touched since is not tuned anew.
 *
 * <p>Ask for the songs in their order, each once.
 */
final class Tuning {
  private static final String WAITS = "waits as its first song wants it";

  static final Comparator<Module> IN_HAND_ORDER = Comparator.comparing(Spot::of, HandOrder.SPOTS);

  private static final String UNKNOWN = "it may be in tune still: hear it first";

  private final boolean fromBeginning;
  private final Tunings soFar;
  private final Map<Module, Ear> lastHeard = new HashMap<>();
  private final Map<Module, Integer> lastTuned = new HashMap<>();
  private final Set<Module> played = new HashSet<>();

  /** Those that the songs asked for so far are heard by, whatever was tuned before. */
  private final Set<Module> heard = new HashSet<>();

  /**
   * @param fromBeginning whether nothing has played yet; in mid-set nobody knows what has, and how
   *     it was tuned then, unless {@code soFar} tells
   */
  Tuning(boolean fromBeginning, Tunings soFar, Rig rig) {
    this.fromBeginning = fromBeginning;
    this.soFar = soFar;
    for (Map.Entry<String, Ear> tuned : soFar.ears().entrySet()) {
      int turn = lastHeard.size() - soFar.ears().size(); // before the first song
      rig.module(tuned.getKey())
          .ifPresent(
              module -> {
                lastHeard.put(module, tuned.getValue());
                lastTuned.put(module, turn);
              });
    }
  }

  /**
   * A module that is tuned in the set-up for the later song that it waits for.
   *
   * @param number of that song, from 1
   */
  record Early(Module module, SongPlan song, int number) {}

  /**
   * What the ear does before a song.
   *
   * @param steps in the order of tuning: left to right, but none before its reference
   * @param tuned the modules of those steps
   * @param early what is tuned beside them for later songs, last
   * @param trusted the modules beside them that are still in tune as far as the patch can tell
   */
  record Ahead(List<Step> steps, Set<Module> tuned, List<Early> early, List<Module> trusted) {}

  /** What is to be tuned in the set-up for a song, with what waits for the songs after it. */
  Ahead inSetUp(List<SongPlan> songs, int number) {
    Ahead now = before(songs.get(number), number);
    List<Step> steps = new ArrayList<>(now.steps());
    List<Early> early = new ArrayList<>();
    Set<Module> seen = new HashSet<>(heard);
    for (int later = number + 1; later < songs.size(); later++) {
      Waiting waiting = new Waiting(songs, number, later);
      for (Module module : waiting.tuned()) {
        if (seen.add(module) && isNextToTune(waiting, module)) {
          SongPlan song = songs.get(later);
          lastHeard.put(module, waiting.ear(module));
          lastTuned.put(module, number);
          early.add(new Early(module, song, later + 1));
          String target = waiting.wishes().words(module);
          double size = Extent.ofTuning(module, song);
          Ear ear = waiting.ear(module);
          steps.add(ChangeoverSteps.tune(module, ear, target, WAITS, size, later, true));
        }
      }
    }
    return new Ahead(steps, now.tuned(), early, now.trusted());
  }

  /**
   * Whether it hangs as the later song wants it, is not in tune, and what it is tuned against is.
   */
  private boolean isNextToTune(Waiting waiting, Module module) {
    return !isTuned(waiting, module)
        && waiting.isInPlace(module)
        && waiting.wishes().reference(module).stream().allMatch(other -> isTuned(waiting, other));
  }

  private boolean isTuned(Waiting waiting, Module module) {
    return waiting.ear(module).equals(lastHeard.get(module));
  }

  /** What is to be tuned before a song, and what is not. */
  Ahead before(SongPlan song, int number) {
    PitchPaths paths = new PitchPaths(song);
    TuneWishes wishes = new TuneWishes(song);
    Set<Module> tuned = new HashSet<>();
    List<Step> steps = new ArrayList<>();
    List<Module> trusted = new ArrayList<>();
    Set<Module> newcomers = newcomers(song);
    for (Module module : wishes.tuned(song, paths, IN_HAND_ORDER)) {
      heard.add(module);
      Ear now = Ear.of(song, module, paths, wishes);
      Optional<Ear> before = Optional.ofNullable(lastHeard.put(module, now));
      String reason = before.map(now::changesSince).orElse(fresh(newcomers, module, now));
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
        String target = wishes.words(module);
        steps.add(ChangeoverSteps.tune(module, now, target, reason, size, number, false));
      }
    }
    trusted.addAll(keyless(song, paths, wishes));
    return new Ahead(steps, tuned, List.of(), trusted);
  }

  /** What no key moves and no patch tunes, such as a drum, but was tuned and stands as it did. */
  private List<Module> keyless(SongPlan song, PitchPaths paths, TuneWishes wishes) {
    List<Module> seen = wishes.tuned(song, paths, IN_HAND_ORDER);
    Audible audible = new Audible(song);
    return song.casting().stream()
        .map(CastAs::module)
        .filter(module -> !seen.contains(module) && lastTuned.containsKey(module))
        .filter(audible::hearsItself)
        .filter(
            module ->
                Ear.of(song, module, paths, wishes)
                    .settings()
                    .equals(lastHeard.get(module).settings()))
        .sorted(IN_HAND_ORDER)
        .toList();
  }

  /** When it was tuned last: before that song, or earlier; less than any if it was not. */
  private int lastTuned(Module module) {
    return lastTuned.getOrDefault(module, Integer.MIN_VALUE);
  }

  /** Those that have not played before. */
  private Set<Module> newcomers(SongPlan song) {
    Set<Module> newcomers = new HashSet<>();
    song.casting().stream().map(CastAs::module).filter(played::add).forEach(newcomers::add);
    return newcomers;
  }

  private String fresh(Set<Module> newcomers, Module module, Ear now) {
    if (soFar.touched().contains(module.name())) {
      return "touched since it was tuned";
    }
    if (!fromBeginning) {
      return soFar.isEmpty() ? UNKNOWN : "not tuned yet";
    }
    String later = now.cords().isEmpty() ? "tuned for the first time" : "its first pitch cord";
    return newcomers.contains(module) ? "plays for the first time" : later;
  }
}
