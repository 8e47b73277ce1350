package entracte.check;

import static entracte.check.PatchBuilder.patch;
import static entracte.check.RigBuilder.commonKinds;

import entracte.rig.Rig;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One output to several inputs takes a multiple, and a chain of them if one has too few taps. */
final class SplitsTest extends MistakesTest {
  private static Rig rig(String... multiples) {
    return commonKinds()
        .kind("big multiple", k -> k.taps(6))
        .row("keys: keys", "osc 1: oscillator", "osc 2: oscillator", "osc 3: oscillator")
        .row(multiples)
        .row("out: output")
        .build();
  }

  private static PatchBuilder wheelTo(String... sinks) {
    return patch("p")
        .cord("keys.wheel", sinks)
        .cord("osc 1.saw", "out.left")
        .cord("osc 2.saw", "out.right");
  }

  @Test
  void oneMultipleOfFourTapsFeedsThree() {
    assertSaid(List.of(), rig("m: multiple"), wheelTo("osc 1.fm", "osc 2.fm", "osc 1.sync").song());
  }

  @Test
  void aRigWithoutMultiplesSplitsNothing() {
    assertSaid(
        List.of(
            "error: \"keys.wheel\" feeds 2 jacks, and the rig has no multiple"
                + " / A jack takes one plug: feed one jack, or add a multiple to the rig."),
        rig(),
        wheelTo("osc 1.fm", "osc 2.fm").song());
  }

  private static Rig equalPitches(String... multiples) {
    String[] row = new String[multiples.length + 1];
    row[0] = "out: output";
    System.arraycopy(multiples, 0, row, 1, multiples.length);
    return RigBuilder.commonKinds()
        .kind("keyboard", k -> k.out("pitch x2", "gate"))
        .row("keys: keyboard", "osc 1: oscillator", "osc 2: oscillator", "lfo: lfo")
        .row(row)
        .build();
  }

  private static PatchBuilder pitchTo(String... sinks) {
    return patch("p")
        .cord("keys.pitch", sinks)
        .cord("osc 1.saw", "out.left")
        .cord("osc 2.saw", "out.right");
  }

  @Test
  void equalJacksAreAMultipleThatTheSourceBrings() {
    assertSaid(
        List.of(
            "error: \"keys.pitch\" feeds 2 jacks, and the rig has no multiple"
                + " / \"keys\" has equal jacks: let \"keys.pitch 1\" and \"keys.pitch 2\" feed one"
                + " jack each."),
        equalPitches(),
        pitchTo("osc 1.pitch", "osc 2.pitch").song());
    assertSaid(
        List.of(
            "error: \"keys.pitch\" feeds 3 jacks, and the rig has no multiple"
                + " / A jack takes one plug: feed one jack, or add a multiple to the rig."),
        equalPitches(),
        pitchTo("osc 1.pitch", "osc 2.pitch", "osc 1.fm").song());
  }

  @Test
  void equalJacksHelpToo() {
    assertSaid(
        List.of(
            "error: 2 outputs feed several jacks each and need 2 multiples; 1 is free"
                + " / \"keys\" has equal jacks: let \"keys.pitch 1\" and \"keys.pitch 2\" feed one"
                + " jack each."),
        equalPitches("m: multiple"),
        pitchTo("osc 1.pitch", "osc 2.pitch").cord("keys.gate", "osc 1.fm", "osc 2.fm").song());
  }

  /** Two of four taps: 8 taps, 2 in the cord between, 1 for the source: 5 sinks. */
  @Test
  void aChainOfTwoFeedsFiveAndNotSix() {
    String[] five = {"osc 1.fm", "osc 2.fm", "osc 1.sync", "osc 2.sync", "osc 1.pitch"};
    String[] six = {
      "osc 1.fm", "osc 2.fm", "osc 1.sync", "osc 2.sync", "osc 1.pitch", "osc 2.pitch"
    };
    assertSaid(List.of(), rig("m: multiple", "n: multiple"), wheelTo(five).song());
    assertSaid(
        List.of(
            "error: \"keys.wheel\" feeds 6 jacks, more than all multiples together can"
                + " / Feed fewer jacks, or add a multiple to the rig."),
        rig("m: multiple", "n: multiple"),
        wheelTo(six).song());
  }

  @Test
  void aChainMayMixSizes() {
    String[] six = {
      "osc 1.fm", "osc 2.fm", "osc 1.sync", "osc 2.sync", "osc 1.pitch", "osc 2.pitch"
    };
    assertSaid(List.of(), rig("m: multiple", "n: big multiple"), wheelTo(six).song());
  }

  @Test
  void twoSplitsNeedAMultipleEach() {
    assertSaid(
        List.of(
            "error: 2 outputs feed several jacks each and need 2 multiples; 1 is free"
                + " / Feed fewer jacks from one output, or add a multiple to the rig."),
        rig("m: multiple"),
        wheelTo("osc 1.fm", "osc 2.fm").cord("keys.pitch 1", "osc 1.pitch", "osc 2.pitch").song());
  }

  @Test
  void aMultipleThatThePatchNamesIsNotFree() {
    assertSaid(
        List.of(
            "error: \"keys.pitch 1\" feeds several jacks and needs 1 multiple; 0 are free"
                + " / Feed fewer jacks from one output, or add a multiple to the rig."),
        rig("m: multiple"),
        wheelTo("m.tap")
            .cord("m.tap", "osc 1.fm")
            .cord("keys.pitch 1", "osc 1.pitch", "osc 2.pitch")
            .song());
  }
}
