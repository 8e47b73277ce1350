package entracte.cue;

import entracte.plan.SongPlan;
import entracte.rig.Module;
import java.util.List;
import java.util.stream.IntStream;

/** The oscillators of a later song, as they hang on the rig while others play. */
final class Waiting {
  private final List<SongPlan> songs;
  private final int from;
  private final int later;
  private final PitchPaths paths;
  private final TuneWishes wishes;

  /**
   * @param from the song with which the waiting begins
   * @param later the song that ends it
   */
  Waiting(List<SongPlan> songs, int from, int later) {
    this.songs = songs;
    this.from = from;
    this.later = later;
    this.paths = new PitchPaths(songs.get(later));
    this.wishes = new TuneWishes(songs.get(later));
  }

  TuneWishes wishes() {
    return wishes;
  }

  List<Module> tuned() {
    return wishes.tuned(songs.get(later), paths, Tuning.IN_HAND_ORDER);
  }

  /** What its pitch hangs on in the later song. */
  Ear ear(Module module) {
    return Ear.of(songs.get(later), module, paths, wishes);
  }

  /** Whether it hangs so from the first of the songs on; what is bent on its way is left out. */
  boolean isInPlace(Module module) {
    Ear wanted = ear(module);
    boolean straight =
        paths.into(module).stream()
            .allMatch(
                path -> PitchRoute.into(path.cord(), songs.get(later), paths).through().isEmpty());
    return straight
        && IntStream.range(from, later)
            .mapToObj(this::rigDuring)
            .allMatch(rig -> Ear.of(rig, module, new PitchPaths(rig), wishes).equals(wanted));
  }

  /** All that is plugged and set during another song, taken as if the later one played on it. */
  private SongPlan rigDuring(int song) {
    SongPlan now = songs.get(song);
    SongPlan wanted = songs.get(later);
    return new SongPlan(wanted.song(), wanted.casting(), now.cords(), List.of(), now.positions());
  }
}
