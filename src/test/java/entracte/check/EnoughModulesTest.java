package entracte.check;

import static entracte.check.PatchBuilder.patch;

import java.util.List;
import org.junit.jupiter.api.Test;

/** More roles than modules: the roles that stand in each other's way are named together. */
final class EnoughModulesTest extends MistakesTest {
  private static PatchBuilder oscillators(int count) {
    PatchBuilder patch = patch("p");
    for (int i = 1; i <= count; i++) {
      patch.role("voice " + i, "oscillator").cord("voice " + i + ".saw", "mix 1." + i + ".in");
    }
    return patch.cord("mix 1.out", "out.left");
  }

  @Test
  void asManyRolesAsModulesPass() {
    assertSaid(List.of(), oscillators(3));
  }

  @Test
  void oneRoleTooMany() {
    assertSaid(
        List.of(
            "error: \"voice 1\", \"voice 2\", \"voice 3\" and \"voice 4\" need 4 modules of kind"
                + " \"oscillator\", and the rig has 3: osc 1, osc 2 and osc 3"
                + " / Spare a role, or let one of them be played by another kind."),
        oscillators(4));
  }

  @Test
  void twoRolesTooManyAreOneMistake() {
    assertSaid(
        List.of(
            "error: \"a\", \"b\", \"c\" and \"d\" need 4 modules of kind \"filter\", and the rig"
                + " has 2: filter 1 and filter 2"
                + " / Spare a role, or let one of them be played by another kind."),
        patch("p")
            .role("a", "filter")
            .role("b", "filter")
            .role("c", "filter")
            .role("d", "filter")
            .cord("keys.wheel", "a.audio")
            .cord("a.out", "b.audio")
            .cord("b.out", "c.audio")
            .cord("c.out", "d.audio")
            .cord("d.out", "out.left"));
  }

  @Test
  void aModuleNamedOutrightIsTakenFromTheRoles() {
    assertSaid(
        List.of(
            "error: \"voice 1\", \"voice 2\", \"voice 3\" and \"osc 2\" need 4 modules of kind"
                + " \"oscillator\", and the rig has 3: osc 1, osc 2 and osc 3"
                + " / Spare a role, or let one of them be played by another kind."),
        oscillators(3).cord("osc 2.saw", "mix 1.4.in"));
  }

  /** Role d could be played by the third oscillator, so it is not in the way. */
  @Test
  void rolesWithAnotherWayOutAreNotNamed() {
    assertSaid(
        List.of(
            "error: \"a\", \"b\" and \"c\" need 3 modules, and only 2 will do: osc 1 and osc 2"
                + " / Spare a role, or let one of them be played by another kind."),
        patch("p")
            .role("d", "oscillator")
            .role("a", "osc 1", "osc 2")
            .role("b", "osc 2", "osc 1")
            .role("c", "osc 2", "osc 1")
            .cord("a.saw", "mix 1.1.in")
            .cord("b.saw", "mix 1.2.in")
            .cord("c.saw", "mix 1.3.in")
            .cord("d.saw", "mix 1.4.in")
            .cord("mix 1.out", "out.left"));
  }
}
