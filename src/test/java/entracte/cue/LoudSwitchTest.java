package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.plan.Action;
import entracte.plan.Plan;
import entracte.rig.CordStock;
import entracte.rig.Group;
import entracte.rig.Jumper;
import entracte.rig.Kind;
import entracte.rig.Position;
import entracte.rig.Toggle;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LoudSwitchTest {
  private static final String CAUTION = " (main level down first, then bring it up slowly)";

  private final SmallRig rig = new SmallRig(CordStock.unlimited());

  @Test
  void theCautionStandsRightAtTheStep() {
    assertEquals(
        "SWITCH mix 1 gain from x1 to x10" + CAUTION,
        Wording.flip(
            new Action.Flip(
                rig.control("mix 1.gain"),
                Optional.of(new Position.Thrown("x1")),
                new Position.Thrown("x10"))));
  }

  @Test
  void aSwitchThatIsNotLoudHasNone() {
    assertEquals(
        "SWITCH osc 1 octave to 8",
        Wording.flip(
            new Action.Flip(
                rig.control("osc 1.octave"), Optional.empty(), new Position.Thrown("8"))));
  }

  @Test
  void namesAndPositionsTell() {
    assertEquals(CAUTION, caution("input gain", List.of("low", "high")));
    assertEquals(CAUTION, caution("input", List.of("soft", "Drive")));
    assertEquals(CAUTION, caution("pad", List.of("0 dB", "20 dB")));
    assertEquals(CAUTION, caution("range", List.of("x1", "x10", "x100")));
    assertEquals("", caution("octave", List.of("16", "8", "4")));
    assertEquals("", caution("against", List.of("driver", "x")), "whole words only");
  }

  @Test
  void aLoudJumperSaysSoToo() {
    Jumper drive = new Jumper("drive", List.of("off", "on"));
    assertEquals(
        "filter 1 drive to on" + CAUTION,
        Wording.jumper(new Plan.JumperIn(rig.module("filter 1"), drive), "on"));
  }

  @Test
  void aFiltersSlopeIsNotLoud() {
    Toggle slope = new Toggle(kind("filter"), "slope", List.of("12 dB", "24 dB"));
    assertEquals("", LoudSwitch.caution(slope));
  }

  private static String caution(String name, List<String> positions) {
    return LoudSwitch.caution(new Toggle(kind("mixer"), name, positions));
  }

  private static Kind kind(String name) {
    Group own = new Group(Group.Form.OWN, "", 1, List.of(), List.of(), List.of(), Map.of());
    return new Kind(name, List.of(own), List.of(), Kind.DEFAULT_WIDTH_CM, Set.of());
  }
}
