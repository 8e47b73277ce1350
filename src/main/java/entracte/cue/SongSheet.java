package entracte.cue;

import entracte.plan.Plan;
import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.setlist.Song;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One song for the papers: what the player reads of it, and its patch in full, so that somebody who
 * has never seen it can build it on a bare rig.
 *
 * @param number from 1
 * @param encore whether it is played only if called for
 * @param casting who plays what
 * @param gear what each piece of gear is sent
 * @param jumpers those of its modules that this set cares about
 * @param cords the cords it needs, from left to right: {@code osc 1 saw to mix 1 channel 2 in}
 * @param settings the knobs and switches its patch names, a line for each module: {@code filter 1:
 *     cutoff at 4, resonance at 3}
 * @param talkSeconds the talk before it, while the hands work; 0 for none
 * @param beside what else is plugged and set in the set, for later songs
 * @param tuning what the oscillators are tuned to
 * @param voices what to listen to, one after the other
 * @param desk what becomes louder or softer on the way to it, for somebody at a mixing desk
 * @param patchNotes what the patch card says besides
 */
public record SongSheet(
    int number,
    String song,
    Optional<String> key,
    Optional<String> tempo,
    Optional<String> starts,
    Optional<String> notes,
    OptionalDouble lengthSeconds,
    double talkSeconds,
    boolean encore,
    List<String> casting,
    List<String> gear,
    List<String> jumpers,
    List<String> cords,
    List<String> settings,
    Standing beside,
    List<String> tuning,
    List<String> voices,
    List<String> desk,
    PatchNotes patchNotes) {
  public SongSheet {
    casting = List.copyOf(casting);
    gear = List.copyOf(gear);
    jumpers = List.copyOf(jumpers);
    cords = List.copyOf(cords);
    settings = List.copyOf(settings);
    tuning = List.copyOf(tuning);
    voices = List.copyOf(voices);
    desk = List.copyOf(desk);
  }

  static SongSheet of(Plan plan, int index, List<NamedSettings> named) {
    SongPlan song = plan.songs().get(index);
    Song.Card card = song.song().card();
    Optional<SongPlan> before =
        index == 0 ? Optional.empty() : Optional.of(plan.songs().get(index - 1));
    SongCard words = SongCard.of(song);
    return new SongSheet(
        index + 1,
        song.song().name(),
        card.key(),
        card.tempo(),
        card.starts(),
        card.notes(),
        card.lengthSeconds(),
        song.song().running().talkSeconds(),
        card.encore(),
        words.casting(),
        words.gear(),
        jumpers(plan, song),
        cords(song),
        settings(song, named.get(index)),
        Standing.beside(plan, index, named),
        TuningTargets.of(song, plan.setList().pitch()),
        Voices.of(song),
        DeskNotes.of(before, song),
        PatchNotes.of(song, plan.jumpers()));
  }

  private static List<String> jumpers(Plan plan, SongPlan song) {
    return plan.jumpers().entrySet().stream()
        .filter(e -> song.casting().stream().anyMatch(c -> c.module().equals(e.getKey().module())))
        .map(
            e ->
                e.getKey().module().name()
                    + " "
                    + e.getKey().jumper().name()
                    + " at "
                    + e.getValue())
        .sorted()
        .toList();
  }

  private static List<String> cords(SongPlan song) {
    Comparator<PluggedCord> bySource =
        Comparator.comparing(cord -> Spot.of(cord.cord().source()), HandOrder.SPOTS);
    return song.required().stream()
        .sorted(bySource.thenComparing(Wording::both))
        .map(Wording::both)
        .toList();
  }

  private static List<String> settings(SongPlan song, NamedSettings named) {
    return Standing.settings(
        named.all().stream().map(NamedSettings.Named::control),
        control ->
            song.positions().get(control)
                + (named.of(control).orElseThrow().byEar() ? " (then by ear)" : ""),
        song.positions());
  }
}
