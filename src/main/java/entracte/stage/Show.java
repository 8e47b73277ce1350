package entracte.stage;

import entracte.cue.Spot;
import entracte.midi.Dispatch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What does not change during a show. Songs are known by their index in {@code songs}.
 *
 * @param modules one spot for each module, top row first, left to right
 * @param jacks every jack by the name that changes use, in the order of the modules
 * @param quiet what makes all gear fall silent
 * @param slotSeconds how long the stage is ours
 * @param fallback the song for when nothing else works
 * @param drone a song outside the order that sounds by itself; the last of {@code songs}
 * @param hold what a foot that stays down does
 * @param deafMillis how long the foot is not heard after something was sent
 * @param drift how the instrument drifts
 */
public record Show(
    String set,
    List<ShowSong> songs,
    List<Spot> modules,
    List<String> jacks,
    List<Dispatch> quiet,
    OptionalDouble slotSeconds,
    Optional<Integer> fallback,
    Optional<Integer> drone,
    Hold hold,
    long deafMillis,
    Drift drift) {
  /** What a long press does. */
  public enum Hold {
    MENU,
    BACK,
    NOTHING
  }

  /** A show on an instrument of whose drift nothing is known. */
  public Show(
      String set,
      List<ShowSong> songs,
      List<Spot> modules,
      List<String> jacks,
      List<Dispatch> quiet,
      OptionalDouble slotSeconds,
      Optional<Integer> fallback,
      Optional<Integer> drone,
      Hold hold,
      long deafMillis) {
    this(
        set,
        songs,
        modules,
        jacks,
        quiet,
        slotSeconds,
        fallback,
        drone,
        hold,
        deafMillis,
        Drift.unknown());
  }

  public Show {
    songs = List.copyOf(songs);
    modules = List.copyOf(modules);
    jacks = List.copyOf(jacks);
    quiet = List.copyOf(quiet);
  }

  String title(int song) {
    return songs.get(song).title();
  }

  /** The songs of the set in its order. */
  public List<Integer> order() {
    return IntStream.range(0, songs.size())
        .filter(song -> !Optional.of(song).equals(drone))
        .boxed()
        .toList();
  }

  /** Tells this show from another, as far as a journal depends on it. */
  public String fingerprint() {
    return set + "; " + String.join("; ", songs.stream().map(ShowSong::title).toList());
  }
}
