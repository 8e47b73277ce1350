package entracte.setlist;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One song of the set.
 *
 * @param settings this song's own; they stand above those of its patch
 * @param gapSeconds the silence that may stand before this song
 * @param card what the player reads: key, tempo, who starts, notes
 * @param running what else it does to the length of the set
 * @param sections parts of it that send something of their own, in their order
 */
public record Song(
    String name,
    Patch patch,
    List<Setting> settings,
    OptionalDouble gapSeconds,
    List<GearCue> gear,
    Card card,
    Running running,
    List<Section> sections) {
  public Song {
    Objects.requireNonNull(patch);
    settings = List.copyOf(settings);
    gear = List.copyOf(gear);
    sections = List.copyOf(sections);
  }

  /** A song all of one piece. */
  public Song(
      String name,
      Patch patch,
      List<Setting> settings,
      OptionalDouble gapSeconds,
      List<GearCue> gear,
      Card card,
      Running running) {
    this(name, patch, settings, gapSeconds, gear, card, running, List.of());
  }

  /** A part of a song, such as a chorus, that sets its gear otherwise. */
  public record Section(String name, List<GearCue> gear) {
    public Section {
      gear = List.copyOf(gear);
    }
  }

  /** A song before which nobody talks and which may be dropped. */
  public Song(
      String name,
      Patch patch,
      List<Setting> settings,
      OptionalDouble gapSeconds,
      List<GearCue> gear,
      Card card) {
    this(name, patch, settings, gapSeconds, gear, card, Running.plain());
  }

  /**
   * What a song does to the length of the set.
   *
   * @param talkSeconds the talk before it, while the hands work
   * @param keep whether it stays even if the set runs late
   */
  public record Running(double talkSeconds, boolean keep) {
    public Running {
      if (!(talkSeconds >= 0)) {
        throw new IllegalArgumentException("talk of " + talkSeconds + " s");
      }
    }

    /** No talk, and nothing that forbids to drop it. */
    public static Running plain() {
      return new Running(0, false);
    }
  }

  /**
   * What the player reads; each empty if the set does not say.
   *
   * @param listenFor what tells that the sound is right, in this song
   * @param encore whether the song is played only if it is called for
   */
  public record Card(
      Optional<String> key,
      Optional<String> tempo,
      Optional<String> starts,
      Optional<String> notes,
      OptionalDouble lengthSeconds,
      boolean encore,
      Optional<String> listenFor) {
    /** The card of a song in which nothing is listened for. */
    public Card(
        Optional<String> key,
        Optional<String> tempo,
        Optional<String> starts,
        Optional<String> notes,
        OptionalDouble lengthSeconds,
        boolean encore) {
      this(key, tempo, starts, notes, lengthSeconds, encore, Optional.empty());
    }

    /** The card of a song that is played in any case. */
    public Card(
        Optional<String> key,
        Optional<String> tempo,
        Optional<String> starts,
        Optional<String> notes,
        OptionalDouble lengthSeconds) {
      this(key, tempo, starts, notes, lengthSeconds, false);
    }

    public static Card blank() {
      return new Card(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty());
    }
  }
}
