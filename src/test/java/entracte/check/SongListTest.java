package entracte.check;

import entracte.setlist.Patch;
import entracte.setlist.Song;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The list of songs itself. */
final class SongListTest extends MistakesTest {
  private static final Patch VOICE = voice().build();

  private static Song gap(String name, double seconds) {
    return new Song(
        name, VOICE, List.of(), OptionalDouble.of(seconds), List.of(), Song.Card.blank());
  }

  @Test
  void aSetHasSongs() {
    assertSaid(
        List.of("error: the set has no songs / List them under \"songs\", each with its patch."),
        RIG);
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

  @Test
  void aGapTakesTime() {
    assertSaid(
        List.of(
            "error: the gap before \"Dawn\" is 0 s"
                + " / Give the seconds that the audience will wait, or leave the gap out."),
        RIG,
        gap("Dusk", 0.5),
        gap("Dawn", 0));
    assertSaid(
        List.of(
            "error: the gap before \"Dusk\" is -3 s"
                + " / Give the seconds that the audience will wait, or leave the gap out."),
        RIG,
        gap("Dusk", -3));
  }

  @Test
  void aWrongGapOfTheWholeSetIsToldOnce() {
    assertSaid(
        List.of(
            "error: the gap before \"Dusk\" and 2 more songs is 0 s"
                + " / Give the seconds that the audience will wait, or leave the gap out."),
        RIG,
        gap("Dusk", 0),
        gap("Dawn", 0),
        gap("Noon", 0));
  }
}
