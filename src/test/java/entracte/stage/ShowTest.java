package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What makes a show the same show when its names were changed between two starts. */
final class ShowTest {
  private static final List<String> TITLES = List.of("Kettle", "Clock", "Enamel", "Late", "Drone");
  private final Show show = new SmallShow().show;

  private Show named(String set, List<String> titles) {
    List<ShowSong> songs = new ArrayList<>();
    for (int song = 0; song < titles.size(); song++) {
      ShowSong old = show.songs().get(Math.min(song, show.songs().size() - 1));
      songs.add(ShowSong.outline(titles.get(song), old.encore(), old.sends()));
    }
    return new Show(
        set,
        songs,
        show.modules(),
        show.jacks(),
        show.quiet(),
        show.slotSeconds(),
        show.fallback(),
        show.drone(),
        show.hold(),
        show.deafMillis());
  }

  private Optional<List<String>> renamed(String set, String... titles) {
    return named(set, List.of(titles)).renamedSince(show.fingerprint());
  }

  @Test
  void theSameNamesAreTheSameShow() {
    assertEquals(show.fingerprint(), named("Kitchen", TITLES).fingerprint());
    assertEquals(Optional.of(List.of()), show.renamedSince(show.fingerprint()));
    assertNotEquals(show.fingerprint(), named("Cellar", TITLES).fingerprint());
  }

  @Test
  void aSongOrASetOfAnotherNameIsTold() {
    assertEquals(
        Optional.of(List.of("song 2 was called Clock and is Cuckoo")),
        renamed("Kitchen", "Kettle", "Cuckoo", "Enamel", "Late", "Drone"));
    assertEquals(
        Optional.of(
            List.of(
                "the set was called Kitchen and is Cellar",
                "song 1 was called Kettle and is Pot",
                "song 4 was called Late and is Later")),
        renamed("Cellar", "Pot", "Clock", "Enamel", "Later", "Drone"));
  }

  @Test
  void whereMostNamesAreOthersItIsAnotherShow() {
    assertEquals(Optional.empty(), renamed("Kitchen", "A", "B", "C", "Late", "Drone"));
    assertEquals(2, renamed("Kitchen", "A", "B", "Enamel", "Late", "Drone").orElseThrow().size());
  }

  @Test
  void songsInAnotherOrderAreAnotherShow() {
    assertEquals(
        Optional.empty(), renamed("Kitchen", "Clock", "Kettle", "Enamel", "Late", "Drone"));
  }

  @Test
  void moreOrFewerSongsAreAnotherShow() {
    assertEquals(Optional.empty(), renamed("Kitchen", "Kettle", "Clock", "Enamel", "Late"));
    assertEquals(
        Optional.empty(), renamed("Kitchen", "Kettle", "Clock", "Enamel", "Late", "Drone", "More"));
  }
}
