package entracte.cue;

import entracte.plan.Plan;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All that goes on paper for one plan: the cue sheet, and what only paper needs. The second front
 * door of this package.
 *
 * @param start what the rig is like before the first step
 * @param songs every song of the set, in its order
 * @param plugged how many cords are in the rig while each song sounds
 */
public record Paperwork(
    CueSheet sheet,
    CaseMap map,
    Standing start,
    List<SongSheet> songs,
    List<Integer> plugged,
    Packing packing) {
  public Paperwork {
    songs = List.copyOf(songs);
    plugged = List.copyOf(plugged);
  }

  /** Words {@code plan} for hands that move at {@code pace}. */
  public static Paperwork of(Plan plan, Pace pace) {
    List<NamedSettings> named = plan.songs().stream().map(NamedSettings::of).toList();
    return new Paperwork(
        CueSheet.of(plan, pace),
        CaseMap.of(plan.setList().rig()),
        Standing.before(plan),
        IntStream.range(0, named.size()).mapToObj(i -> SongSheet.of(plan, i, named)).toList(),
        plan.songs().stream().map(song -> song.cords().size()).toList(),
        Packing.of(plan));
  }

  /** The song that a cue leads to. */
  public SongSheet song(Cue cue) {
    return songs.get(cue.number() - 1);
  }
}
