package entracte.cue;

import entracte.plan.SongPlan;
import entracte.rig.Module;
import entracte.setlist.PitchStandard;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What is said to the ear before a song.
 *
 * @param before what is seen to before anything is tuned; empty if nothing is
 * @param targets which key is held, and what the oscillators that have a step are tuned to
 * @param trusted the modules that should still be in tune
 * @param listenFor what tells that the sound is right, by the patch and by the song
 * @param mind what makes the tuning of this song worse than it might be
 * @param level what becomes much louder or softer than the song before
 */
public record EarNotes(
    List<String> before,
    List<String> targets,
    List<String> trusted,
    List<String> listenFor,
    List<String> mind,
    Optional<String> level) {
  private static final String HEARING =
      "main level still down, headphones up from zero, or a tuner";

  public EarNotes {
    before = List.copyOf(before);
    targets = List.copyOf(targets);
    trusted = List.copyOf(trusted);
    listenFor = List.copyOf(listenFor);
    mind = List.copyOf(mind);
  }

  static EarNotes none() {
    return new EarNotes(List.of(), List.of(), List.of(), List.of(), List.of(), Optional.empty());
  }

  /**
   * @param before the song before; empty if there is none
   * @param warmUp how long after power on tuning makes sense, if that is now still to come
   */
  static EarNotes of(
      Tuning.Ahead tuning,
      SongPlan song,
      PitchStandard standard,
      Optional<SongPlan> before,
      OptionalDouble warmUp) {
    return new EarNotes(
        tuning.steps().isEmpty() ? List.of() : beforeTuning(tuning, song, warmUp),
        TuningTargets.ahead(song, standard, tuning),
        tuning.trusted().stream().map(Module::name).toList(),
        listenFor(song.song()),
        PitchNotes.of(song).warnings(),
        before.flatMap(last -> new Levels(song).against(new Levels(last))));
  }

  private static List<String> beforeTuning(
      Tuning.Ahead tuning, SongPlan song, OptionalDouble warmUp) {
    List<String> lines = new ArrayList<>();
    warmUp.ifPresent(s -> lines.add("wait until the rig has been on for " + TimeText.of(s)));
    lines.add(HEARING);
    if (!tuning.early().isEmpty()) {
      lines.add("hear what waits by a spare cord from its output");
    }
    Audible audible = new Audible(song);
    tuning.tuned().stream()
        .filter(module -> !audible.hearsItself(module))
        .sorted(Tuning.IN_HAND_ORDER)
        .forEach(module -> lines.add("hear " + module.name() + " by a spare cord from its output"));
    if (Playing.movesWheel(song)) {
      lines.add("leave the wheel at rest");
    }
    return lines;
  }

  /** The steps of tuning, each with its target, the first also with what concerns them all. */
  List<Step> onto(List<Step> tuning) {
    List<Step> noted = new ArrayList<>();
    for (Step step : tuning) {
      List<String> notes = new ArrayList<>();
      if (noted.isEmpty()) {
        notes.add("Before: " + String.join("; ", before));
      }
      notes.addAll(target(step));
      if (noted.isEmpty()) {
        notes.addAll(
            trusted.isEmpty() ? List.of() : List.of("Trust " + String.join(", ", trusted)));
        notes.addAll(mind.isEmpty() ? List.of() : List.of("Mind: " + String.join("; ", mind)));
      }
      noted.add(step.noting(notes));
    }
    return noted;
  }

  /** {@code 660 Hz, a pure fifth above osc 1, with A4 held (440 Hz)}. */
  private List<String> target(Step step) {
    String head = step.touches().get(0).name() + ": ";
    return targets.stream()
        .filter(line -> line.startsWith(head))
        .map(line -> line.substring(head.length()) + "; " + held())
        .toList();
  }

  /** Short, because the hands read it: {@code with A4 held (440 Hz)}. */
  private String held() {
    return targets.get(0).replace(", the A above middle C,", "");
  }

  /** What the patch says, then what the song says. */
  public static List<String> listenFor(Song song) {
    return Stream.of(song.patch().sound().listenFor(), song.card().listenFor())
        .flatMap(Optional::stream)
        .distinct()
        .toList();
  }
}
