package entracte.check;

import static entracte.check.PatchBuilder.patch;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Cords run from an output to an input, and one jack takes one plug. */
final class PlugsTest extends MistakesTest {
  @Test
  void twoOutputsAreNotJoined() {
    assertSaid(
        List.of(
            "error: \"lead.sine\" and \"osc 2.saw\" are both outputs"
                + " / Two outputs are blended in a mixer, never joined by a cord."),
        voice().cord("lead.sine", "osc 2.saw"));
  }

  @Test
  void ofSeveralSinksTheOutputsAreTold() {
    assertSaid(
        List.of(
            "error: \"lead.sine\" and \"osc 2.saw\" are both outputs"
                + " / Two outputs are blended in a mixer, never joined by a cord."),
        voice().cord("lead.sine", "bright.cutoff cv", "osc 2.saw"));
  }

  @Test
  void twoInputsAreNotJoined() {
    assertSaid(
        List.of(
            "error: \"lead.fm\" and \"osc 2.fm\" are both inputs"
                + " / Write the output first, then the inputs that it feeds."),
        voice().cord("lead.fm", "osc 2.fm"));
  }

  @Test
  void aConnectionWrittenTheWrongWayRoundIsToldSo() {
    assertSaid(
        List.of(
            "error: \"lead.fm\" is an input and \"keys.wheel\" an output"
                + " / Write it the other way round: \"keys.wheel: lead.fm\"."),
        voice().cord("lead.fm", "keys.wheel"));
  }

  @Test
  void anInputIsNoSource() {
    assertSaid(
        List.of(
            "error: \"lead.fm\" is an input, and cords start at an output"
                + " / Write the output first, then the inputs that it feeds."),
        voice().cord("lead.fm", "mult 1.tap"));
  }

  @Test
  void anOutputIsNoSink() {
    assertSaid(
        List.of(
            "error: \"osc 2.saw\" is an output, and cords end at an input"
                + " / Two outputs are blended in a mixer, never joined by a cord."),
        voice().cord("keys.wheel", "mult 1.tap").cord("mult 1.tap", "osc 2.saw"));
  }

  @Test
  void anInputIsFedOnce() {
    assertSaid(
        List.of(
            "error: \"bright.audio\" is fed twice"
                + " / A jack takes one plug: blend the two signals in a mixer first."),
        voice().cord("osc 2.saw", "bright.audio"));
  }

  @Test
  void anInputIsFedOnceThroughMultiplesToo() {
    assertSaid(
        List.of(
            "error: \"bright.audio\" is fed twice"
                + " / A jack takes one plug: blend the two signals in a mixer first."),
        voice().cord("osc 2.saw", "out.right", "bright.audio"));
  }

  @Test
  void aChannelsInputIsFedOnce() {
    assertSaid(
        List.of(
            "error: \"mix 1.low.in\" is fed twice"
                + " / A jack takes one plug: blend the two signals in a mixer first."),
        voice()
            .cord("osc 2.saw", "mix 1.low.in")
            .cord("osc 2.sine", "mix 1.low.in")
            .cord("mix 1.out", "out.right"));
  }

  @Test
  void equalJacksTakeAsManyCordsAsThereAre() {
    assertSaid(
        List.of(
            "error: kind \"oscillator\" has 2 jacks \"pitch\", and \"lead\" uses more"
                + " / Blend what goes there in a mixer."),
        voice().cord("keys.wheel", "lead.pitch").cord("keys.pitch 2", "lead.pitch"));
  }

  @Test
  void oneNumberOfEqualJacksTakesOneCord() {
    assertSaid(
        List.of(
            "error: \"lead.pitch 2\" is fed twice"
                + " / A jack takes one plug: blend the two signals in a mixer first."),
        patch("p")
            .role("lead", "oscillator")
            .cord("keys.wheel", "lead.pitch 2")
            .cord("keys.pitch 2", "lead.pitch 2")
            .cord("lead.saw", "out.left"));
  }

  @Test
  void anOutputIsTheSourceOfOneConnection() {
    assertSaid(
        List.of(
            "error: \"lead.saw\" is the source of two connections"
                + " / List all its sinks in one connection; a multiple is found for it."),
        voice().cord("lead.saw", "out.right"));
  }

  @Test
  void twoSignalsDoNotMeetInAMultiple() {
    assertSaid(
        List.of(
            "error: \"keys.wheel\" and \"osc 2.sine\" meet in the multiple \"split\""
                + " / A multiple copies one signal; two are blended in a mixer."),
        voice()
            .role("split", "multiple")
            .cord("keys.wheel", "split.tap")
            .cord("osc 2.sine", "split.tap")
            .cord("split.tap 3", "lead.fm"));
  }

  @Test
  void aMultipleSplitsSomething() {
    assertSaid(
        List.of(
            "warning: nothing feeds the multiple \"split\""
                + " / Connect an output to one of its taps."),
        voice().role("split", "multiple").cord("split.tap", "lead.fm"));
  }
}
