package entracte.check;

import entracte.setlist.Setting;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Knobs, switches and jumpers that are not there, and positions that they do not have. */
final class SettingsTest extends MistakesTest {
  @Test
  void aControlIsOnTheKind() {
    assertSaid(
        List.of(
            "error: kind \"filter\" has no knob, switch or jumper \"cuttof\""
                + " / Did you mean \"cutoff\"?"),
        voice().set("bright", "cuttof", "4"));
  }

  @Test
  void aKnobTurnsWithinItsScale() {
    assertSaid(
        List.of(
            "error: kind \"filter\" has \"cutoff\" from 0 to 10, and 12.5 is off that scale"
                + " / The nearest figure is 10."),
        voice().set("bright", "cutoff", "12.5 +-3"));
  }

  @Test
  void aToleranceMayReachBeyondTheScale() {
    assertSaid(List.of(), voice().set("bright", "cutoff", "10 +-3"));
  }

  @Test
  void aToleranceBeyondBothEndsOfTheScaleIsASlip() {
    String advice = " / Write a tolerance smaller than the scale, or leave the setting out.";
    assertSaid(
        List.of(
            "warning: \"5 +-20\" lets \"cutoff\" stand anywhere: its scale runs from 0 to 10"
                + advice),
        voice().set("bright", "cutoff", "5 +-20"));
    assertSaid(
        List.of(
            "warning: \"0 +-11\" lets \"level\" stand anywhere: its scale runs from 0 to 10"
                + advice),
        voice()
            .cord("lead.sine", "mix 1.a.in")
            .cord("mix 1.out", "out.right")
            .set("mix 1.a", "level", "0 +-11"));
    assertSaid(List.of(), voice().set("bright", "cutoff", "5 +-5"));
  }

  @Test
  void aFigureHasAPoint() {
    assertSaid(
        List.of(
            "error: kind \"filter\" has a knob \"cutoff\", and \"4,5 +-0,5\" is no figure"
                + " / Write 4.5 +-0.5, with a point."),
        voice().set("bright", "cutoff", "4,5 +-0,5"));
  }

  @Test
  void aStretchOfTheScaleIsItsMiddleWithRoom() {
    assertSaid(
        List.of(
            "error: kind \"filter\" has a knob \"cutoff\", and \"2.5 .. 3.5\" is no figure"
                + " / Write \"3 +-0.5\": the middle, and the room on both sides."),
        voice().set("bright", "cutoff", "2.5 .. 3.5"));
  }

  @Test
  void aKnobIsSetToAFigure() {
    assertSaid(
        List.of(
            "error: kind \"filter\" has a knob \"cutoff\", and \"wide\" is no figure"
                + " / Write a figure from 0 to 10, or one with room to spare, such as"
                + " \"5 +-0.5\"."),
        voice().set("bright", "cutoff", "wide"));
  }

  @Test
  void aSwitchStandsAtOneOfItsPositions() {
    assertSaid(
        List.of(
            "error: kind \"filter\" has a switch \"slope\" without a position \"steeep\""
                + " / Did you mean \"steep\"?"),
        voice().set("bright", "slope", "steeep"));
  }

  @Test
  void aJumperStandsAtOneOfItsPositions() {
    assertSaid(
        List.of(
            "error: kind \"filter\" has a jumper \"other slope\" without a position \"4-pole\""
                + " / Did you mean \"2-pole\"?"),
        voice().set("bright", "other slope", "4-pole"));
  }

  @Test
  void aKnobOfTheChannelsNeedsAChannel() {
    assertSaid(
        List.of(
            "error: module \"mix 1\" has no knob, switch or jumper \"level\""
                + " / Each channel has one: set it under \"mix 1.1\", or name a channel."),
        voice().set("mix 1", "level", "4"));
  }

  @Test
  void aChannelHasItsOwnControlsOnly() {
    assertSaid(
        List.of(
            "error: module \"mix 1\" has channels without a knob or switch \"lvel\""
                + " / Did you mean \"level\"?"),
        voice().set("mix 1.low", "lvel", "4"));
  }

  @Test
  void aControlOfTheWholeModuleIsNotSetUnderAChannel() {
    assertSaid(
        List.of(
            "error: module \"desk\" has channels without a knob or switch \"master\""
                + " / It belongs to the whole module: set it under \"desk\"."),
        RigBuilder.rig()
            .kind("desk", k -> k.in("aux").knob("master", 0, 10).channels(2))
            .row("desk: desk")
            .build(),
        PatchBuilder.patch("p").set("desk.1", "master", "4").song());
  }

  @Test
  void theSongsOwnSettingIsCheckedInPlaceOfThePatchs() {
    assertSaid(
        List.of(
            "error: kind \"filter\" has \"cutoff\" from 0 to 10, and -1 is off that scale"
                + " / The nearest figure is 0."),
        RIG,
        PatchBuilder.song(
            "a",
            voice().set("bright", "cutoff", "50").build(),
            new Setting("bright", "cutoff", "-1")));
  }

  @Test
  void aKindWhoseScaleIsTooShortIsPassedOver() {
    assertSaid(
        List.of(
            "note: kind \"small\" will not do for \"a\": it has \"level\" from 0 to 5, and 7 is"
                + " off that scale / Others will do; it only leaves the plan less freedom."),
        twoScales(k -> k.in("in").knob("level", 0, 5)),
        PatchBuilder.patch("p")
            .role("a", "big", "small")
            .cord("out 1.o", "a.in")
            .set("a", "level", "7")
            .song());
  }

  @Test
  void aKindThatHasASwitchWhereTheFirstHasAKnobIsPassedOver() {
    assertSaid(
        List.of(
            "note: kind \"small\" will not do for \"a\": it reads the patch in another way"
                + " / Others will do; it only leaves the plan less freedom."),
        twoScales(k -> k.in("in").flip("level", "3", "7")),
        PatchBuilder.patch("p")
            .role("a", "big", "small")
            .cord("out 1.o", "a.in")
            .set("a", "level", "7")
            .song());
  }

  private static entracte.rig.Rig twoScales(java.util.function.UnaryOperator<KindBuilder> small) {
    return RigBuilder.rig()
        .kind("big", k -> k.in("in").knob("level", 0, 10))
        .kind("small", small)
        .kind("origin", k -> k.out("o"))
        .row("big 1: big", "small 1: small", "out 1: origin")
        .build();
  }
}
