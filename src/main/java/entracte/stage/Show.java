package entracte.stage;

import entracte.cue.Spot;
import entracte.midi.Dispatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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
  private static final String PART = "; ";

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

  /** All that the course of a night depends on: neither what is sent nor what is only read. */
  public Show outline() {
    return new Show(
        set,
        songs.stream().map(s -> ShowSong.outline(s.title(), s.encore(), s.sends())).toList(),
        modules,
        jacks,
        ShowSong.sending(!quiet.isEmpty()),
        OptionalDouble.empty(),
        fallback,
        drone,
        hold,
        deafMillis);
  }

  /** Tells this show from another, as far as a journal depends on it. */
  public String fingerprint() {
    return set + PART + String.join(PART, songs.stream().map(ShowSong::title).toList());
  }

  /**
   * What is called otherwise than in the show of that fingerprint, a few words each; empty if that
   * was another show. As many songs, most of them in their old places, make the same show: names
   * are mended between two nights, and in one.
   */
  public Optional<List<String>> renamedSince(String fingerprint) {
    if (fingerprint.equals(fingerprint())) {
      return Optional.of(List.of());
    }
    List<String> old = List.of(fingerprint.split(PART, -1));
    List<String> young = List.of(fingerprint().split(PART, -1));
    if (old.size() != young.size() || old.size() != songs.size() + 1) {
      return Optional.empty();
    }
    List<String> renamed = new ArrayList<>();
    for (int name = 0; name < old.size(); name++) {
      if (!old.get(name).equals(young.get(name))) {
        renamed.add(
            (name == 0 ? "the set" : "song " + name)
                + " was called "
                + old.get(name)
                + " and is "
                + young.get(name));
      }
    }
    boolean moved = renamed.size() > 1 && Set.copyOf(old).equals(Set.copyOf(young));
    int renamedSongs = renamed.size() - (old.get(0).equals(young.get(0)) ? 0 : 1);
    return moved || 2 * renamedSongs > songs.size() ? Optional.empty() : Optional.of(renamed);
  }
}
