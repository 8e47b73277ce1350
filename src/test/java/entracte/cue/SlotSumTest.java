package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.setlist.Patch;
import entracte.setlist.Slot;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SlotSumTest {
  @Test
  void talkGoesOnWhileTheHandsWork() {
    Slot slot = new Slot(OptionalDouble.of(600), 60);
    assertEquals(
        Optional.of(
            "Songs 7 min, between them 1 min 40 s (talk or changeover, whichever is longer): 8 min"
                + " 40 s in all. Slot 10 min, less 1 min in reserve: 20 s to spare."),
        sum(slot, song("One", 200), song("Two", 120, 70), song("Three", 100, 10)));
  }

  @Test
  void anOverrunIsSaid() {
    Slot slot = new Slot(OptionalDouble.of(240), 0);
    assertEquals(
        Optional.of(
            "Songs 5 min, between them 30 s (talk or changeover, whichever is longer): 5 min 30 s"
                + " in all. Slot 4 min: 1 min 30 s too long."),
        sum(slot, song("One", 200), song("Two", 100)));
  }

  @Test
  void aSongWithoutALengthIsNamed() {
    assertEquals(
        Optional.of(
            "Songs 3 min 20 s, between them 30 s (talk or changeover, whichever is longer): 3 min"
                + " 50 s in all. No length is given for Two."),
        sum(Slot.open(), song("One", 200), song("Two", 0)));
  }

  @Test
  void aSongThatTheSetKeepsIsNamed() {
    assertEquals(
        Optional.of(
            "Songs 5 min, between them 30 s (talk or changeover, whichever is longer): 5 min 30 s"
                + " in all. If it runs late, the player says which song goes; never Two."),
        sum(Slot.open(), song("One", 200), kept(song("Two", 100))));
  }

  private static Song kept(Song song) {
    return new Song(
        song.name(),
        song.patch(),
        song.settings(),
        song.gapSeconds(),
        song.gear(),
        song.card(),
        new Song.Running(0, true));
  }

  @Test
  void whereNothingIsCountedNothingIsSaid() {
    assertEquals(Optional.empty(), sum(Slot.open(), song("One", 0)));
  }

  /** Each changeover takes 30 s; the first is the set-up. */
  private static Optional<String> sum(Slot slot, Song... songs) {
    List<Cue> cues = new ArrayList<>();
    for (Song song : songs) {
      cues.add(
          new Cue(
              cues.size() + 1,
              song.name(),
              cues.isEmpty(),
              List.of(),
              30,
              0,
              OptionalDouble.empty(),
              List.of(),
              List.of(),
              new SongCard(List.of(), List.of(), List.of())));
    }
    return SlotSum.of(slot, List.of(songs), cues);
  }

  private static Song song(String name, double seconds) {
    return song(name, seconds, 0);
  }

  private static Song song(String name, double seconds, double talk) {
    OptionalDouble length = seconds == 0 ? OptionalDouble.empty() : OptionalDouble.of(seconds);
    Song.Card card =
        new Song.Card(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), length);
    Patch patch = new Patch("any", List.of(), List.of(), List.of());
    Song.Running running = new Song.Running(talk, false);
    return new Song(name, patch, List.of(), OptionalDouble.empty(), List.of(), card, running);
  }
}
