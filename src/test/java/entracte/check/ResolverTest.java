package entracte.check;

import static entracte.check.PatchBuilder.patch;
import static entracte.check.RigBuilder.commonKinds;
import static entracte.check.SetBuilder.playable;
import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.check.Part.CastRole;
import entracte.check.Part.JackUse;
import entracte.check.Part.JumperNeed;
import entracte.check.Part.Net;
import entracte.check.Part.Owner;
import entracte.check.Part.Strip;
import entracte.check.Part.Wanted;
import entracte.rig.Kind;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.setlist.Interval;
import entracte.setlist.Patch;
import entracte.setlist.Setting;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What names come to mean. Two oscillators, a modulation oscillator, a filter, a mixer of four
 * channels, a multiple of four taps; keys and an output that patches name outright.
 */
final class ResolverTest {
  private static final Rig RIG =
      commonKinds()
          .row("keys: keys", "osc 1: oscillator", "osc 2: oscillator", "slow: lfo")
          .row("filter 1: filter", "mix.a: mixer", "mult 1: multiple", "out: output")
          .build();

  private static Part part(PatchBuilder patch) {
    return playable(RIG, patch.song()).parts().get(0);
  }

  private static List<String> names(CastRole role) {
    return role.candidates().stream().map(Module::name).toList();
  }

  private static JackUse own(int role, String jack) {
    return new JackUse(new Owner(role, Owner.OWN), jack);
  }

  private static JackUse strip(int role, int strip, String jack) {
    return new JackUse(new Owner(role, strip), jack);
  }

  @Test
  void aRoleMayBePlayedByEveryModuleOfItsKind() {
    Part part = part(patch("p").role("lead", "oscillator").cord("lead.saw", "out.left"));
    assertEquals("lead", part.roles().get(0).name());
    assertEquals(List.of("osc 1", "osc 2"), names(part.roles().get(0)));
  }

  @Test
  void modulesNamedOutrightAreRolesAfterThoseOfThePatchInTheOrderOfTheirFirstMention() {
    Part part =
        part(
            patch("p")
                .role("lead", "oscillator")
                .cord("keys.pitch 1", "lead.pitch")
                .cord("lead.saw", "out.left"));
    assertEquals(
        List.of("lead", "keys", "out"), part.roles().stream().map(CastRole::name).toList());
    assertEquals(List.of("keys"), names(part.roles().get(1)));
    assertEquals(
        List.of(
            new Net(own(1, "pitch 1"), List.of(strip(0, 0, "pitch"))),
            new Net(own(0, "saw"), List.of(own(2, "left")))),
        part.nets());
  }

  @Test
  void oneNameOfEqualJacksUsedTwiceMeansTwoOfThem() {
    Part part =
        part(
            patch("p")
                .role("lead", "oscillator")
                .cord("keys.pitch 1", "lead.pitch")
                .cord("keys.wheel", "lead.pitch 2")
                .cord("lead.saw", "out.left"));
    assertEquals(
        List.of(new Strip("pitch", "pitch", 0), new Strip("pitch 2", "pitch", 2)),
        part.roles().get(0).channels());
    assertEquals(strip(0, 0, "pitch"), part.nets().get(0).sinks().get(0));
    assertEquals(strip(0, 1, "pitch"), part.nets().get(1).sinks().get(0));
  }

  @Test
  void aNamedChannelIsOneStripInConnectionsAndSettings() {
    Part part =
        part(
            patch("p")
                .role("blend", "mixer")
                .cord("osc 1.saw", "blend.low.in")
                .cord("osc 2.saw", "blend.3.in")
                .cord("blend.out", "out.left")
                .set("blend.low", "level", "7")
                .set("blend.high", "level", "5 +-1"));
    assertEquals(
        List.of(new Strip("low", "", 0), new Strip("3", "", 3), new Strip("high", "", 0)),
        part.roles().get(0).channels());
    assertEquals(
        List.of(
            new Wanted.Knob(new Owner(0, 0), "level", Interval.exactly(7)),
            new Wanted.Knob(new Owner(0, 2), "level", new Interval(4, 6, 5))),
        part.settings());
  }

  @Test
  void aModuleWithADotInItsNameIsFoundBeforeAChannel() {
    Part part = part(patch("p").cord("osc 1.saw", "mix.a.2.in").cord("mix.a.out", "out.left"));
    assertEquals(
        List.of("osc 1", "mix.a", "out"), part.roles().stream().map(CastRole::name).toList());
    assertEquals(strip(1, 0, "in"), part.nets().get(0).sinks().get(0));
    assertEquals(own(1, "out"), part.nets().get(1).source());
  }

  @Test
  void tapsOfAMultipleThatThePatchNamesAreEqualJacks() {
    Part part =
        part(
            patch("p")
                .role("split", "multiple")
                .cord("keys.pitch 1", "split.tap")
                .cord("split.tap 3", "osc 1.pitch")
                .cord("osc 1.saw", "out.left"));
    assertEquals(
        List.of(new Strip("tap", "tap", 0), new Strip("tap 3", "tap", 3)),
        part.roles().get(0).channels());
  }

  @Test
  void aRoleOfTwoKindsIsPlayedByThoseThatHaveEverythingThePatchNames() {
    Part part =
        part(
            patch("p")
                .role("lead", "oscillator", "lfo")
                .cord("keys.pitch 1", "lead.pitch")
                .cord("lead.sine", "out.left"));
    assertEquals(List.of("osc 1", "osc 2", "slow"), names(part.roles().get(0)));
    Strip pitch = part.roles().get(0).channels().get(0);
    assertEquals(new Strip("pitch", "pitch", 0), pitch);
    assertEquals(2, pitch.groupOf(RIG.kind("oscillator").orElseThrow()).orElseThrow().count());
    assertEquals(RIG.kind("lfo").map(Kind::own), pitch.groupOf(RIG.kind("lfo").orElseThrow()));
  }

  @Test
  void aRoleMayBePinnedToAModule() {
    Part part = part(patch("p").role("lead", "osc 2").cord("lead.saw", "out.left"));
    assertEquals(List.of("osc 2"), names(part.roles().get(0)));
  }

  @Test
  void switchesAndJumpersGoWhereTheyBelong() {
    Part part =
        part(
            patch("p")
                .role("bright", "filter")
                .cord("osc 1.saw", "bright.audio")
                .cord("bright.out", "out.left")
                .set("bright", "slope", "other")
                .set("bright", "other slope", "3-pole"));
    assertEquals(
        List.of(new Wanted.Switch(new Owner(0, Owner.OWN), "slope", "other")), part.settings());
    assertEquals(List.of(new JumperNeed(0, "other slope", "3-pole")), part.jumpers());
  }

  @Test
  void theSongsOwnSettingsStandAboveThoseOfItsPatch() {
    Patch patch =
        patch("p")
            .role("bright", "filter")
            .cord("osc 1.saw", "bright.audio")
            .cord("bright.out", "out.left")
            .set("bright", "cutoff", "6")
            .set("bright", "resonance", "3")
            .build();
    PlayableSet set =
        playable(
            RIG,
            PatchBuilder.song("a", patch, new Setting("bright", "cutoff", "4")),
            PatchBuilder.song("b", patch));
    Owner bright = new Owner(0, Owner.OWN);
    Wanted resonance = new Wanted.Knob(bright, "resonance", Interval.exactly(3));
    assertEquals(
        List.of(new Wanted.Knob(bright, "cutoff", Interval.exactly(4)), resonance),
        set.parts().get(0).settings());
    assertEquals(
        List.of(new Wanted.Knob(bright, "cutoff", Interval.exactly(6)), resonance),
        set.parts().get(1).settings());
    assertEquals("b", set.parts().get(1).song().name());
  }
}
