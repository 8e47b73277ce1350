package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.plan.oracle.CpSatOracle;
import entracte.plan.sample.RandomSets;
import entracte.plan.sample.Sample;
import entracte.rig.Control;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

/**
 * Plans for the fewest seconds against the reference solver, on random small sets and hands that
 * are quick in some places and slow in others: what is called proven is the least, and nothing is
 * less.
 */
final class QuickestAgainstOracleTest {
  private static final int SETS = 15;
  private static final double TRIES = 2;
  private static final double EFFORT = 1;

  /** Hands that take from a tenth of a second to three at each place, the same each time. */
  private record Hands(long seed) implements Tempo {
    private double seconds(Object what, int how) {
      RandomGenerator random =
          RandomGeneratorFactory.of("L64X128MixRandom")
              .create(31 * (31 * seed + what.toString().hashCode()) + how);
      return random.nextInt(10, 301) / 100.0;
    }

    @Override
    public double pull(Socket at) {
      return seconds(at, 1);
    }

    @Override
    public double plug(Socket at) {
      return seconds(at, 2);
    }

    @Override
    public double turn(Control knob) {
      return seconds(knob, 3);
    }

    @Override
    public double flip(Control toggle) {
      return seconds(toggle, 4);
    }
  }

  @Test
  void whatIsProvenIsTheLeast() {
    List<String> quarrels = new ArrayList<>();
    int solved = 0;
    int proven = 0;
    for (int seed = 0; solved < SETS && seed < TRIES * SETS; seed++) {
      Sample sample = RandomSets.any(seed, 3, 6 + seed % 2);
      Tempo hands = new Hands(seed);
      OptionalLong least = CpSatOracle.quickest(sample.set(), sample.start(), hands, EFFORT);
      Options options =
          Options.defaults().withStart(sample.start()).withAim(Aim.FASTEST).withTempo(hands);
      if (least.isEmpty()
          || !(Planner.plan(sample.set(), options) instanceof Result.Planned planned)) {
        continue;
      }
      solved++;
      assertEquals(List.of(), Verifier.verify(planned.plan()), sample.toString());
      long found = Math.round(100 * planned.plan().seconds(hands));
      proven += planned.quickest() ? 1 : 0;
      if (found < least.getAsLong() || (planned.quickest() && found > least.getAsLong())) {
        quarrels.add("%s: %d, the least is %s".formatted(sample, found, least));
      }
    }
    assertEquals(List.of(), quarrels);
    assertEquals(SETS, solved, "sets solved");
    assertTrue(proven > 0.9 * solved, proven + " of " + solved + " proven");
  }
}
