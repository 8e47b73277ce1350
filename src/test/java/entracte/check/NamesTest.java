package entracte.check;

import static entracte.check.PatchBuilder.patch;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Names that nobody knows, each with the nearest that somebody does. */
final class NamesTest extends MistakesTest {
  @Test
  void aVoiceWithoutMistakesPasses() {
    assertSaid(List.of(), voice());
  }

  @Test
  void anOwnerIsARoleOrAModule() {
    assertSaid(
        List.of(
            "error: \"leed\" is no role of this patch and no module of the rig"
                + " / Did you mean \"lead\"?"),
        voice().cord("keys.wheel", "leed.fm"));
  }

  @Test
  void anUnknownOwnerIsToldOnceThoughNamedThrice() {
    assertSaid(
        List.of(
            "error: \"leed\" is no role of this patch and no module of the rig"
                + " / Did you mean \"lead\"?"),
        voice()
            .cord("keys.wheel", "leed.fm")
            .cord("leed.sine", "out.right")
            .set("leed", "tune", "0"));
  }

  @Test
  void anUnknownOwnerWithAChannelIsToldByTheOwnersName() {
    assertSaid(
        List.of(
            "error: \"mix 2\" is no role of this patch and no module of the rig"
                + " / Did you mean \"mix 1\"?"),
        voice().cord("lead.sine", "mix 2.low.in"));
  }

  @Test
  void anEndHasAnOwnerAndAJack() {
    assertSaid(
        List.of(
            "error: there is no role or module before the jack"
                + " / Write a role or a module, a dot, and its jack: \"lead.pitch\"."),
        voice().cord("keys.wheel", "fm"));
  }

  @Test
  void aRoleIsPlayedByAKindOrAModule() {
    assertSaid(
        List.of(
            "error: \"oscilator\" is no kind and no module of the rig"
                + " / Did you mean \"oscillator\"?"),
        voice().role("bass", "oscilator").cord("bass.saw", "out.right"));
  }

  @Test
  void aRoleSaysWhatMayPlayIt() {
    assertSaid(
        List.of(
            "error: the role \"bass\" does not say what may play it"
                + " / Name a kind, a list of kinds, or one module."),
        voice().role("bass").cord("bass.saw", "out.right"));
  }

  @Test
  void aRoleStandsOnce() {
    assertSaid(
        List.of("error: the role \"lead\" stands twice / Call one of them otherwise."),
        voice().role("lead", "oscillator"));
  }

  @Test
  void aKindWithoutModulesPlaysNothing() {
    assertSaid(
        List.of(
            "error: the rig has no module of kind \"oscillator\" / The role \"lead\" needs one."),
        RigBuilder.commonKinds().row("out: output").build(),
        patch("p").role("lead", "oscillator").cord("lead.saw", "out.left").song());
  }

  @Test
  void aJackIsOnTheKindThatPlaysTheRole() {
    assertSaid(
        List.of("error: kind \"oscillator\" has no jack \"pluse\" / Did you mean \"pulse\"?"),
        voice().cord("lead.pluse", "out.right"));
  }

  @Test
  void aJackIsOnTheModuleThatIsNamedOutright() {
    assertSaid(
        List.of(
            "error: module \"keys\" has no jack \"velocity\""
                + " / Known here: pitch 1, pitch 2, gate 1, gate 2, wheel."),
        voice().cord("keys.velocity", "lead.fm"));
  }

  @Test
  void equalJacksHaveNumbersUpToTheirCount() {
    assertSaid(
        List.of(
            "error: kind \"oscillator\" has no jack \"pitch 3\""
                + " / Its jacks \"pitch\" are numbered 1 to 2."),
        voice().cord("keys.wheel", "lead.pitch 3"));
  }

  @Test
  void aJackOfTheChannelsNeedsAChannel() {
    assertSaid(
        List.of(
            "error: module \"mix 1\" has no jack \"in\""
                + " / It is a jack of each channel: write \"mix 1.1.in\", or name a channel as you"
                + " like."),
        voice().cord("lead.sine", "mix 1.in").cord("mix 1.out", "out.right"));
  }

  @Test
  void aJackOfTheWholeModuleNeedsNoChannel() {
    assertSaid(
        List.of(
            "error: module \"mix 1\" has channels without a jack \"out\""
                + " / It is a jack of the whole module: write \"mix 1.out\"."),
        voice().cord("lead.sine", "mix 1.low.in").cord("mix 1.low.out", "out.right"));
  }

  @Test
  void channelsHaveNumbersUpToTheirCount() {
    assertSaid(
        List.of("error: module \"mix 1\" has no channel 5 / Its channels are numbered 1 to 4."),
        voice().cord("lead.sine", "mix 1.5.in").cord("mix 1.out", "out.right"));
  }

  @Test
  void aPatchNamesNoMoreChannelsThanThereAre() {
    assertSaid(
        List.of("error: module \"mix 1\" has 4 channels, and \"mix 1\" uses more"),
        patch("p")
            .cord("osc 1.saw", "mix 1.a.in")
            .cord("osc 1.sine", "mix 1.b.in")
            .cord("osc 2.saw", "mix 1.c.in")
            .cord("osc 2.sine", "mix 1.2.in")
            .cord("osc 3.saw", "mix 1.e.in")
            .cord("mix 1.out", "out.left"));
  }

  @Test
  void onlyAKindWithChannelsHasThem() {
    assertSaid(
        List.of("error: kind \"filter\" has no channels / Leave out \".low\"."),
        voice().cord("lead.sine", "bright.low.audio"));
  }

  @Test
  void ofTwoKindsTheOneThatLacksAJackIsPassedOver() {
    assertSaid(
        List.of(
            "note: kind \"lfo\" will not do for \"bass\": it has no jack \"saw\""
                + " / Others will do; it only leaves the plan less freedom."),
        voice().role("bass", "oscillator", "lfo").cord("bass.saw", "out.right"));
  }

  @Test
  void aJackThatNoneOfTheKindsHasIsTheMistake() {
    assertSaid(
        List.of(
            "error: kind \"oscillator\" has no jack \"triangle\""
                + " / Known here: saw, pulse, sine."),
        voice().role("bass", "oscillator", "lfo").cord("bass.triangle", "out.right"));
  }

  @Test
  void kindsThatEachLackSomethingElseCannotPlayTheRole() {
    assertSaid(
        List.of(
            "error: nothing in the rig can play \"bass\": kind \"oscillator\" has no knob, switch"
                + " or jumper \"rate\"; kind \"lfo\" has no jack \"saw\""
                + " / Split the role in two, or leave out what only one of them has."),
        voice()
            .role("bass", "oscillator", "lfo")
            .cord("bass.saw", "out.right")
            .set("bass", "rate", "3"));
  }

  @Test
  void aRoleMayBePinnedToAModuleButNotToTwoRoles() {
    assertSaid(
        List.of(
            "error: \"bass\" and \"drone\" both name the module \"osc 2\""
                + " / Two roles never share a module: make them one role, or name another"
                + " module."),
        voice()
            .role("bass", "osc 2")
            .role("drone", "osc 2")
            .cord("bass.saw", "out.right")
            .cord("drone.saw", "bright.cutoff cv"));
  }

  @Test
  void aModuleThatPlaysARoleIsCalledByTheRolesName() {
    assertSaid(
        List.of("error: the module \"osc 2\" plays the role \"bass\" / Write \"bass\" here."),
        voice().role("bass", "osc 2").cord("bass.saw", "out.right").cord("keys.wheel", "osc 2.fm"));
  }
}
