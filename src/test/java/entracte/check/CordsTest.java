package entracte.check;

import static entracte.check.PatchBuilder.patch;
import static entracte.check.RigBuilder.commonKinds;

import entracte.rig.Rig;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The bag holds cords enough, and long ones for the long ways. */
final class CordsTest extends MistakesTest {
  private static RigBuilder rig() {
    return commonKinds()
        .row("keys: keys", "osc 1: oscillator", "osc 2: oscillator", "mult 1: multiple")
        .row("out: output");
  }

  private static PatchBuilder fiveCords() {
    return patch("five cords")
        .cord("keys.pitch 1", "osc 1.pitch", "osc 2.pitch")
        .cord("osc 1.saw", "out.left")
        .cord("osc 2.saw", "out.right");
  }

  @Test
  void aSplitTakesACordMoreThanItHasSinks() {
    assertSaid(List.of(), rig().cords(5).build(), fiveCords().song());
    assertSaid(
        List.of(
            "error: the patch \"five cords\" needs 5 cords, and there are 4"
                + " / Bring more cords, or leave a connection out. Each multiple on the way"
                + " takes one, too."),
        rig().cords(4).build(),
        fiveCords().song());
  }

  /** Centres 6 cm apart: 1.2 x 6 + 10 = 17.2 cm; 25 cm below and 3 cm aside: 40.2 cm. */
  private static Rig rig(Map<Integer, Integer> cords) {
    return commonKinds()
        .kind("wide", k -> k.in("in").width(12))
        .row("keys: keys", "osc 1: oscillator")
        .row("out: wide")
        .cords(cords)
        .build();
  }

  @Test
  void aWayLongerThanEveryCordIsTold() {
    assertSaid(
        List.of(
            "error: no cord of the patch \"p\""
                + " reaches \"out.in\": it takes 41 cm, and the longest has 40"
                + " / Move the modules closer to each other, or bring a longer cord."),
        rig(Map.of(20, 5, 40, 5)),
        patch("p").cord("osc 1.saw", "out.in").song());
    assertSaid(List.of(), rig(Map.of(20, 5, 41, 5)), patch("p").cord("osc 1.saw", "out.in").song());
  }

  @Test
  void waysThatAreAllTooLongAreToldInOneLine() {
    assertSaid(
        List.of(
            "error: no cord of the patch \"p\""
                + " reaches \"osc 1.pitch\" (18 cm) and \"out.in\" (41 cm); the longest has"
                + " 15 cm / Move the modules closer to each other, or bring longer cords."),
        rig(Map.of(15, 5)),
        patch("p").cord("keys.pitch 1", "osc 1.pitch").cord("osc 1.saw", "out.in").song());
  }

  @Test
  void longWaysNeedLongCords() {
    Rig two =
        commonKinds()
            .row("osc 1: oscillator", "osc 2: oscillator")
            .row("out: output")
            .cords(Map.of(20, 5, 60, 1))
            .build();
    assertSaid(
        List.of(
            "error: the patch \"p\" needs 2 cords of 60 cm or more, and there is 1"
                + " / Move the modules closer to each other, or bring more long cords."),
        two,
        patch("p").cord("osc 1.saw", "out.left").cord("osc 2.saw", "out.right").song());
  }

  @Test
  void longCordsServeForShortWays() {
    assertSaid(
        List.of(),
        rig(Map.of(60, 2)),
        patch("p").cord("keys.wheel", "osc 1.fm").cord("osc 1.saw", "out.in").song());
  }

  @Test
  void aCordWithinOneModuleNeedsTenCentimetres() {
    Rig rig = commonKinds().row("osc 1: oscillator", "slow: lfo").cords(Map.of(10, 1)).build();
    assertSaid(
        List.of(
            "note: nothing in the rig leads to the desk, so it is not checked whether voices are"
                + " heard / Describe the output as a module, or list the jacks that go to the desk"
                + " as \"leaves\".",
            "note: \"osc 1\" feeds itself"
                + " / Feedback can turn loud at once: bring its level up slowly."),
        rig,
        patch("p").cord("osc 1.saw", "osc 1.fm").song());
  }

  @Test
  void aRoleIsPlayedByTheModuleWithinReach() {
    Rig rig =
        commonKinds()
            .row("keys: keys", "osc 1: oscillator", "osc 2: oscillator", "out: output")
            .cords(Map.of(18, 3))
            .build();
    assertSaid(
        List.of(),
        rig,
        patch("p")
            .role("a", "oscillator")
            .cord("keys.pitch 1", "osc 1.pitch")
            .cord("osc 1.saw", "a.pitch")
            .cord("a.saw", "out.left")
            .song());
    assertSaid(
        List.of(
            "error: no cord of the patch \"p\""
                + " reaches \"out.left\": it takes 25 cm, and the longest has 18"
                + " / Move the modules closer to each other, or bring a longer cord."),
        rig,
        patch("p").role("a", "osc 1").cord("a.saw", "out.left").song());
  }
}
