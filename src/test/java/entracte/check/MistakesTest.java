package entracte.check;

import static entracte.check.PatchBuilder.patch;
import static entracte.check.RigBuilder.commonKinds;
import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.rig.Rig;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.List;

/** A common case for tests of single rules, and what the check says, word for word. */
abstract class MistakesTest {
  /** Three oscillators, two of most things, one mixer of four channels, one multiple. */
  static final Rig RIG =
      commonKinds()
          .row("keys: keys", "osc 1: oscillator", "osc 2: oscillator", "osc 3: oscillator")
          .row("slow: lfo", "filter 1: filter", "filter 2: filter", "env 1: envelope")
          .row("env 2: envelope", "amp 1: amplifier", "mix 1: mixer", "mult 1: multiple")
          .row("out: output")
          .build();

  static void assertSaid(List<String> expected, Rig rig, Song... songs) {
    assertSaid(expected, SetBuilder.set(rig, songs));
  }

  static void assertSaid(List<String> expected, SetList set) {
    assertEquals(expected, SetBuilder.say(SetBuilder.check(set).findings()));
  }

  static void assertSaid(List<String> expected, PatchBuilder patch) {
    assertSaid(expected, RIG, patch.song());
  }

  /** A voice that has no mistake: lead from the keys through a filter to the output. */
  static PatchBuilder voice() {
    return patch("voice")
        .role("lead", "oscillator")
        .role("bright", "filter")
        .cord("keys.pitch 1", "lead.pitch")
        .cord("lead.saw", "bright.audio")
        .cord("bright.out", "out.left");
  }
}
