package entracte.check;

import static entracte.check.PatchBuilder.patch;
import static entracte.check.RigBuilder.commonKinds;

import entracte.rig.Rig;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is connected leads somewhere, is triggered, and does not howl by accident. */
final class HeardTest extends MistakesTest {
  @Test
  void aVoiceThatEndsBeforeTheOutputIsNotHeard() {
    assertSaid(
        List.of(
            "warning: \"bright\" is never heard: it leads to no output of the rig"
                + " / Connect an output of it onward, or leave it out."),
        patch("p")
            .role("other", "oscillator")
            .cord("other.sine", "out.left")
            .role("lead", "oscillator")
            .role("bright", "filter")
            .cord("keys.pitch 1", "lead.pitch")
            .cord("lead.saw", "bright.audio"));
  }

  @Test
  void aPatchWithoutAVoiceThatIsHeardIsWrong() {
    assertSaid(
        List.of(
            "error: no voice of this patch is heard: \"bright\" leads to no output of the rig"
                + " / Connect an output onward, till it comes to one that is heard."),
        patch("p")
            .role("lead", "oscillator")
            .role("bright", "filter")
            .cord("keys.pitch 1", "lead.pitch")
            .cord("lead.saw", "bright.audio"));
  }

  @Test
  void whatNothingComesIntoIsAVoice() {
    Rig rig =
        commonKinds()
            .kind("noise", k -> k.out("hiss"))
            .row("keys: keys", "noise 1: noise", "lfo 1: lfo", "filter 1: filter", "out: output")
            .build();
    assertSaid(
        List.of(
            "warning: \"filter 1\" is never heard: it leads to no output of the rig"
                + " / Connect an output of it onward, or leave it out."),
        rig,
        patch("p").cord("noise 1.hiss", "out.left").cord("lfo 1.sine", "filter 1.audio").song());
  }

  @Test
  void aModulationIsHeardThroughWhatItModulates() {
    assertSaid(List.of(), voice().role("shake", "lfo").cord("shake.sine", "lead.fm"));
  }

  @Test
  void rolesThatOnlyFeedEachOtherAreNotHeard() {
    assertSaid(
        List.of(
            "warning: \"a\" and \"b\" are never heard: they lead to no output of the rig"
                + " / Connect an output of it onward, or leave it out.",
            "note: \"a\" feeds \"b\", which feeds \"a\" again"
                + " / Feedback can turn loud at once: bring its level up slowly."),
        voice()
            .role("a", "oscillator")
            .role("b", "filter")
            .cord("a.saw", "b.audio")
            .cord("b.out", "a.fm"));
  }

  @Test
  void aJackThatLeavesForTheDeskIsAnOutput() {
    Rig rig =
        RigBuilder.rig()
            .kind("tone", k -> k.out("o"))
            .kind("amp", k -> k.in("i").out("o").leaves("o"))
            .row("tone 1: tone", "amp 1: amp")
            .build();
    assertSaid(List.of(), rig, patch("p").cord("tone 1.o", "amp 1.i").song());
  }

  @Test
  void aRigWithoutOutputsIsNotedOnce() {
    assertSaid(
        List.of(
            "note: nothing in the rig leads to the desk, so it is not checked whether voices are"
                + " heard / Describe the output as a module, or list the jacks that go to the desk"
                + " as \"leaves\"."),
        commonKinds().row("osc 1: oscillator", "filter 1: filter").build(),
        patch("p").cord("osc 1.saw", "filter 1.audio").song(),
        patch("q").cord("osc 1.sine", "filter 1.audio").song());
  }

  @Test
  void aRoleWithoutCordsIsUseless() {
    assertSaid(
        List.of(
            "warning: \"idle\" is connected to nothing"
                + " / Connect it, or leave the role out: as it stands it only keeps a module"
                + " busy."),
        voice().role("idle", "envelope").set("idle", "attack", "3"));
  }

  @Test
  void anEnvelopeWithoutAGateStaysShut() {
    assertSaid(
        List.of(
            "warning: \"pluck\" is used, and no cord comes to its \"gate\""
                + " / Feed it a gate, unless it is meant to run by itself."),
        voice().role("pluck", "envelope").cord("pluck.out", "bright.cutoff cv"));
    assertSaid(
        List.of(),
        voice()
            .role("pluck", "envelope")
            .cord("keys.gate 1", "pluck.gate")
            .cord("pluck.out", "bright.cutoff cv"));
  }

  private static final String PITCH_ADVICE =
      " / Feed it a pitch, unless it is meant to stay where it is tuned.";

  @Test
  void anOscillatorBesideOneThatIsFedAPitchGetsOneToo() {
    PatchBuilder stacked =
        patch("p")
            .role("low", "oscillator")
            .role("fifth", "oscillator", "lfo")
            .cord("low.sine", "mix 1.low.in")
            .cord("fifth.sine", "mix 1.fifth.in")
            .cord("mix 1.out", "out.left")
            .cord("keys.pitch 1", "low.pitch");
    assertSaid(
        List.of(
            "warning: no cord comes to the \"pitch\" of \"fifth\", and one comes to that of \"low\""
                + PITCH_ADVICE),
        stacked);
    assertSaid(List.of(), stacked.cord("keys.pitch 2", "fifth.pitch"));
  }

  @Test
  void anOscillatorThatShakesItsLikeIsFedAPitch() {
    assertSaid(
        List.of(
            "warning: no cord comes to the \"pitch\" of \"hammer\", and one comes to that of"
                + " \"lead\""
                + PITCH_ADVICE),
        voice().role("hammer", "oscillator").cord("hammer.sine", "lead.fm"));
  }

  @Test
  void keysThatBringNoPitchAnywhereMayHaveLostACord() {
    PatchBuilder voice =
        patch("p")
            .role("lead", "oscillator")
            .role("shape", "envelope")
            .role("amp", "amplifier")
            .cord("keys.gate 1", "shape.gate")
            .cord("shape.out", "amp.level cv")
            .cord("lead.saw", "amp.audio")
            .cord("amp.out", "out.left");
    assertSaid(
        List.of(
            "warning: no cord comes to the \"pitch\" of \"lead\", nor to any other pitch of this"
                + " patch"
                + PITCH_ADVICE),
        voice);
    assertSaid(List.of(), voice.cord("keys.pitch 1", "lead.pitch"));
  }

  /** Drums are tuned by hand, and a drone needs no keys. */
  @Test
  void whatSoundsByItselfNeedsNoPitch() {
    assertSaid(List.of(), voice().role("thump", "oscillator").cord("thump.sine", "out.right"));
    assertSaid(List.of(), patch("drone").role("hum", "oscillator").cord("hum.saw", "out.left"));
  }

  @Test
  void aLoopIsNamedInFull() {
    assertSaid(
        List.of(
            "note: \"lead\" feeds \"bright\", which feeds \"dirt\", which feeds \"lead\" again"
                + " / Feedback can turn loud at once: bring its level up slowly."),
        patch("p")
            .role("lead", "oscillator")
            .role("bright", "filter")
            .role("dirt", "amplifier")
            .cord("lead.saw", "bright.audio")
            .cord("bright.out", "dirt.audio", "out.left")
            .cord("dirt.out", "lead.fm"));
  }

  @Test
  void twoSeparateLoopsAreTwoNotes() {
    assertSaid(
        List.of(
            "note: \"lead\" feeds itself"
                + " / Feedback can turn loud at once: bring its level up slowly.",
            "note: \"bright\" feeds itself"
                + " / Feedback can turn loud at once: bring its level up slowly."),
        patch("p")
            .role("lead", "oscillator")
            .role("bright", "filter")
            .cord("lead.sine", "lead.fm")
            .cord("lead.saw", "bright.audio")
            .cord("bright.out", "bright.cutoff cv", "out.left"));
  }

  /** Two halves that have nothing to do with each other; one in row after the other is no loop. */
  private static final Rig HALVES =
      commonKinds()
          .kind("halves", k -> k.channels(2, java.util.Map.of(), "in", "out"))
          .row("osc 1: oscillator", "cut: halves", "out: output")
          .build();

  @Test
  void oneChannelAfterTheOtherIsNoLoop() {
    assertSaid(
        List.of(),
        HALVES,
        patch("p")
            .cord("osc 1.saw", "cut.a.in")
            .cord("cut.a.out", "cut.b.in")
            .cord("cut.b.out", "out.left")
            .song());
  }

  @Test
  void aChannelMayBeUnheardWhileTheOtherIsHeard() {
    assertSaid(
        List.of(
            "warning: \"cut.b\" is never heard: it leads to no output of the rig"
                + " / Connect an output of it onward, or leave it out."),
        HALVES,
        patch("p")
            .cord("osc 1.saw", "cut.a.in")
            .cord("osc 1.sine", "cut.b.in")
            .cord("cut.a.out", "out.left")
            .song());
  }

  @Test
  void aChannelMayFeedItself() {
    assertSaid(
        List.of(
            "note: \"osc 1\" feeds \"cut.1\", which feeds \"osc 1\" again"
                + " / Feedback can turn loud at once: bring its level up slowly."),
        HALVES,
        patch("p")
            .cord("osc 1.sine", "cut.1.in")
            .cord("cut.1.out", "osc 1.fm")
            .cord("osc 1.saw", "out.left")
            .song());
  }

  @Test
  void aMixerWhoseOutIsUnusedIsToldOnceForAllItsChannels() {
    assertSaid(
        List.of(
            "warning: \"mix 1\" is never heard: it leads to no output of the rig"
                + " / Connect an output of it onward, or leave it out."),
        voice().cord("osc 1.saw", "mix 1.a.in").cord("osc 2.saw", "mix 1.b.in"));
  }
}
