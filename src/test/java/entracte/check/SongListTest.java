package entracte.check;

import entracte.setlist.Patch;
import entracte.setlist.Song;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The list of songs itself. */
final class SongListTest extends MistakesTest {
  private static final Patch VOICE = voice().build();

  @Test
  void aSetHasSongs() {
    assertSaid(
        List.of("error: the set has no songs / List them under \"songs\", each with its patch."),
        RIG);
  }

  @Test
  void aSetIsANightAndNoArchive() {
    assertSaid(List.of(), RIG, songs(1000));
    assertSaid(
        List.of(
            "error: the set has 1001 songs; 1000 can be planned"
                + " / Make a set of each night; sets may share their rig and their patches."),
        RIG,
        songs(1001));
  }

  private static Song[] songs(int count) {
    return IntStream.range(0, count)
        .mapToObj(song -> PatchBuilder.song("Song " + song, VOICE))
        .toArray(Song[]::new);
  }

  @Test
  void songsAreToldApartByName() {
    assertSaid(
        List.of(
            "warning: two songs are called \"Dusk\""
                + " / Give one of them a longer name, so that you can tell them apart on stage."),
        RIG,
        PatchBuilder.song("Dusk", VOICE),
        PatchBuilder.song("Dawn", VOICE),
        PatchBuilder.song("Dusk", VOICE),
        PatchBuilder.song("Dusk", VOICE));
  }
}
