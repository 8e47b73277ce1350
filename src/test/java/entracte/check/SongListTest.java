package entracte.check;

import entracte.setlist.Patch;
import java.util.List;
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
