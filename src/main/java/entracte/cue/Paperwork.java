package entracte.cue;

import entracte.plan.Plan;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * All that goes on paper for one plan: the cue sheet, and what only paper needs. The second front
 * door of this package.
 *
 * @param songs every song of the set, in its order
 * @param plugged how many cords are in the rig while each song sounds
 */
public record Paperwork(
    CueSheet sheet, CaseMap map, List<SongSheet> songs, List<Integer> plugged, Packing packing) {
  private static final Set<String> LOUDNESS =
      Set.of("gain", "drive", "boost", "overdrive", "level", "volume");

  public Paperwork {
    songs = List.copyOf(songs);
    plugged = List.copyOf(plugged);
  }

  /** Words {@code plan} for hands that move at {@code pace}. */
  public static Paperwork of(Plan plan, Pace pace) {
    return new Paperwork(
        CueSheet.of(plan, pace),
        CaseMap.of(plan.setList().rig()),
        IntStream.range(0, plan.songs().size()).mapToObj(i -> SongSheet.of(plan, i)).toList(),
        plan.songs().stream().map(song -> song.cords().size()).toList(),
        Packing.of(plan));
  }

  /** The song that a cue leads to. */
  public SongSheet song(Cue cue) {
    return songs.get(cue.number() - 1);
  }

  /** What the way to a song does to gains and levels: what surprises at the mixing desk. */
  public static List<String> louder(Cue cue) {
    return cue.steps().stream()
        .filter(step -> step.verb() == Verb.TURN || step.verb() == Verb.SWITCH)
        .filter(step -> step.touches().stream().anyMatch(Paperwork::isLoudness))
        .map(step -> step.text().substring(step.verb().name().length()).strip())
        .map(text -> text.replace(LoudSwitch.CAUTION, ""))
        .toList();
  }

  private static boolean isLoudness(Touch touch) {
    List<String> words = List.of(touch.name().toLowerCase(Locale.ROOT).split("\\W+"));
    return words.stream().anyMatch(LOUDNESS::contains);
  }
}
