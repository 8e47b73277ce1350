package entracte.check;

import static entracte.check.PatchBuilder.patch;
import static entracte.check.RigBuilder.commonKinds;

import entracte.rig.Rig;
import entracte.setlist.Song;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A paragraph where a title belongs. */
final class LongNamesTest extends MistakesTest {
  private static final Rig RIG = commonKinds().row("osc 1: oscillator", "out: output").build();

  private static Song called(String title) {
    return PatchBuilder.song(title, patch("p").cord("osc 1.saw", "out.left").build());
  }

  @Test
  void aTitleMayBeLong() {
    assertSaid(List.of(), RIG, called("x".repeat(200)));
  }

  @Test
  void aTitleThatFillsPagesIsRefused() {
    assertSaid(
        List.of(
            "error: the title of a song has 100000 letters / Give it one of at most 200. What else"
                + " there is to say goes into notes."),
        RIG,
        called("x".repeat(100_000)));
  }

  @Test
  void aRoleIsNamedInAFewWords() {
    assertSaid(
        List.of("error: the name of a role has 201 letters / Give it one of at most 200."),
        RIG,
        patch("p")
            .role("r".repeat(201), "oscillator")
            .cord("r".repeat(201) + ".saw", "out.left")
            .song());
  }
}
