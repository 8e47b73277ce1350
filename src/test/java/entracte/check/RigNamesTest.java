package entracte.check;

import static entracte.check.RigBuilder.commonKinds;
import static entracte.check.RigBuilder.rig;

import entracte.rig.Position;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Names in the rig that stand twice or could be read in two ways. */
final class RigNamesTest extends MistakesTest {
  private static final PatchBuilder NOTHING = PatchBuilder.patch("nothing");

  private static void assertRig(List<String> expected, RigBuilder rig) {
    assertSaid(expected, rig.build(), NOTHING.song());
  }

  @Test
  void aModuleStandsOnce() {
    assertRig(
        List.of(
            "error: the module \"osc\" stands twice"
                + " / Number them, such as \"osc 1\" and \"osc 2\"."),
        commonKinds().row("osc: oscillator", "out: output").row("osc: oscillator"));
  }

  @Test
  void aTwinWithANumberGetsAnother() {
    assertRig(
        List.of("error: the module \"osc 1\" stands twice / Give one of them another number."),
        commonKinds().row("osc 1: oscillator", "osc 1: oscillator", "out: output"));
  }

  /** With the twin the two roles would have two modules; that is not to be said twice. */
  @Test
  void aTwinIsNotMissedAsAModule() {
    assertSaid(
        List.of(
            "error: the module \"osc\" stands twice"
                + " / Number them, such as \"osc 1\" and \"osc 2\"."),
        commonKinds().row("osc: oscillator", "osc: oscillator", "out: output").build(),
        PatchBuilder.patch("p")
            .role("a", "oscillator")
            .role("b", "oscillator")
            .cord("a.saw", "out.left")
            .cord("b.saw", "out.right")
            .song());
  }

  @Test
  void aKindStandsOnce() {
    assertRig(
        List.of("error: the kind \"a\" stands twice / Call one of them otherwise."),
        rig().kind("a", k -> k.in("i")).kind("a", k -> k.in("j")));
  }

  @Test
  void aJackStandsOnce() {
    String advice = " / Call one of them otherwise.";
    assertRig(
        List.of(
            "error: the jack \"cv\" stands twice in the kind \"a\"" + advice,
            "error: the jack \"pitch\" stands twice in the kind \"b\"" + advice),
        rig().kind("a", k -> k.in("cv").out("cv")).kind("b", k -> k.in("pitch x2").out("pitch")));
  }

  @Test
  void aControlStandsOnce() {
    String advice = " / Call one of them otherwise.";
    assertRig(
        List.of(
            "error: the control \"slope\" stands twice in the kind \"a\"" + advice,
            "error: the control \"level\" stands twice in the kind \"b\"" + advice),
        rig()
            .kind("a", k -> k.flip("slope", "x", "y").jumper("slope", "x", "y"))
            .kind("b", k -> k.knob("level", 0, 1).flip("level", "on", "off")));
  }

  @Test
  void aChannelsControlMayShareItsNameWithTheModules() {
    assertRig(List.of(), rig().kind("a", k -> k.knob("level", 0, 10).channels(2)));
  }

  @Test
  void aJackHasNoDotInItsName() {
    assertRig(
        List.of(
            "warning: no patch can name the jack \"out.1\""
                + " / The last dot parts a jack from its module: call it otherwise."),
        rig().kind("a", k -> k.out("out.1")));
  }

  @Test
  void aJackDoesNotLookLikeOneOfSeveral() {
    assertRig(
        List.of(
            "warning: \"pitch 2\" looks like one of the equal jacks \"pitch\""
                + " / It is taken for the jack of that name; another name would be clearer."),
        rig().kind("a", k -> k.in("pitch x2", "pitch 2", "pitch 3")));
  }

  @Test
  void aModuleDoesNotLookLikeAChannel() {
    assertRig(
        List.of(
            "warning: \"mix.2\" looks like a channel of \"mix\""
                + " / It is taken for the module; a name without the dot would be clearer."),
        commonKinds().row("mix: mixer", "mix.2: mixer", "out: output", "out.2: output"));
  }

  @Test
  void whatShutsAChannelIsOnTheChannel() {
    assertRig(
        List.of(
            "error: closed: a channel of \"a\" has no knob or switch \"levle\""
                + " / Did you mean \"level\"?"),
        rig().kind("a", k -> k.channels(2, Map.of("levle", new Position.At(0)))));
    assertRig(
        List.of("error: closed: 11 is off the scale of \"level\" / It runs from 0 to 10."),
        rig().kind("a", k -> k.channels(2, Map.of("level", new Position.At(11)))));
    assertRig(
        List.of("error: closed: shut is off the scale of \"level\" / It runs from 0 to 10."),
        rig().kind("a", k -> k.channels(2, Map.of("level", new Position.Thrown("shut")))));
  }

  @Test
  void whatLeavesForTheDeskIsAnOutput() {
    assertRig(
        List.of(
            "error: leaves: \"a\" has no output \"left\" / Known here: phones.",
            "error: leaves: \"a\" has no output \"phoness\" / Did you mean \"phones\"?"),
        rig().kind("a", k -> k.in("left").out("phones").leaves("phoness", "phones", "left")));
  }

  @Test
  void switchesAndJumpersHavePositions() {
    String advice = " / List the names of its positions in square brackets.";
    assertRig(
        List.of(
            "error: the switch \"s\" has no positions" + advice,
            "error: the jumper \"j\" has no positions" + advice),
        rig().kind("a", k -> k.flip("s").jumper("j")));
  }

  @Test
  void aRoleIsNotCalledLikeAModuleThatOthersMayPlayFor() {
    assertSaid(
        List.of(
            "warning: \"osc 2\" is a role of this patch and a module of the rig"
                + " / The role is meant, and another module may play it; a name of its own would be"
                + " clearer."),
        RIG,
        PatchBuilder.patch("p")
            .role("osc 2", "oscillator")
            .role("mix 1", "mixer")
            .cord("osc 2.saw", "mix 1.1.in")
            .cord("mix 1.out", "out.left")
            .song());
  }

  @Test
  void aRoleDoesNotLookLikeAChannel() {
    assertSaid(
        List.of(
            "warning: \"mix 1.low\" looks like a channel of \"mix 1\""
                + " / It is taken for the role; a name without the dot would be clearer.",
            "warning: \"blend.a\" looks like a channel of \"blend\""
                + " / It is taken for the role; a name without the dot would be clearer."),
        RIG,
        PatchBuilder.patch("p")
            .role("mix 1.low", "oscillator")
            .role("blend", "mixer")
            .role("blend.a", "oscillator")
            .cord("mix 1.low.saw", "blend.1.in")
            .cord("blend.a.saw", "blend.2.in")
            .cord("blend.out", "out.left")
            .song());
  }
}
