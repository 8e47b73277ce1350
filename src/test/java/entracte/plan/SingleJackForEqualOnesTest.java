package entracte.plan;

import static entracte.check.PatchBuilder.patch;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import entracte.check.PlayableSet;
import entracte.check.RigBuilder;
import entracte.check.SetBuilder;
import entracte.rig.Rig;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A role may accept a kind with two equal pitch jacks and one with a single pitch jack. The song
 * here has two such roles and one module of each kind, so both kinds must play.
 */
final class SingleJackForEqualOnesTest {
  private static final Rig RIG =
      RigBuilder.commonKinds()
          .row("keys: keys", "osc 1: oscillator", "slow: lfo", "out: output")
          .build();

  @Test
  void theSingleJackServesWhereOneOfTheEqualOnesIsAsked() {
    PlayableSet set =
        SetBuilder.playable(
            RIG,
            patch("p")
                .role("a", "oscillator", "lfo")
                .role("b", "oscillator", "lfo")
                .cord("keys.pitch 1", "a.pitch")
                .cord("keys.pitch 2", "b.pitch")
                .cord("a.sine", "out.left")
                .cord("b.pulse", "out.right")
                .song());
    Result.Planned planned =
        assertInstanceOf(Result.Planned.class, Planner.plan(set, Options.defaults()));
    assertEquals(List.of(), Verifier.verify(planned.plan()));
    assertEquals(8, planned.plan().setUpMoves());
  }
}
