package entracte.cue;

import entracte.plan.SongPlan;
import entracte.rig.Module;
import entracte.setlist.PitchStandard;
import entracte.setlist.Song;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is said to the ear before a song.
 *
 * @param targets which key is held, and what the oscillators that have a step are tuned to
 * @param trusted the modules that should still be in tune
 * @param listenFor what tells that the sound is right, by the patch and by the song
 * @param mind what makes the tuning of this song worse than it might be
 * @param level what becomes much louder or softer than the song before
 */
public record EarNotes(
    List<String> targets,
    List<String> trusted,
    List<String> listenFor,
    List<String> mind,
    Optional<String> level) {
  public EarNotes {
    targets = List.copyOf(targets);
    trusted = List.copyOf(trusted);
    listenFor = List.copyOf(listenFor);
    mind = List.copyOf(mind);
  }

  static EarNotes none() {
    return new EarNotes(List.of(), List.of(), List.of(), List.of(), Optional.empty());
  }

  static EarNotes of(
      Tuning.Ahead tuning, SongPlan song, PitchStandard standard, Optional<SongPlan> before) {
    return new EarNotes(
        TuningTargets.of(song, standard, tuning.tuned()::contains, tuning.trusted()),
        tuning.trusted().stream().map(Module::name).toList(),
        listenFor(song.song()),
        PitchNotes.of(song).warnings(),
        before.flatMap(last -> new Levels(song).against(new Levels(last))));
  }

  /** What the patch says, then what the song says. */
  public static List<String> listenFor(Song song) {
    return Stream.of(song.patch().sound().listenFor(), song.card().listenFor())
        .flatMap(Optional::stream)
        .distinct()
        .toList();
  }
}
