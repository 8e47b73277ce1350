package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.plan.oracle.Answer;
import entracte.plan.oracle.CpSatOracle;
import entracte.plan.sample.RandomSets;
import entracte.plan.sample.Sample;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The planner against the reference solver on random small sets. On each of them the planner has to
 * have the fewest moves, a plan that passes the verifier, and no bound or proof that the reference
 * solver contradicts. Sets that the reference solver does not finish in time are left out, and may
 * be few only.
 */
final class PlannerAgainstOracleTest {
  private static final int SMALL = 120;
  private static final int MANY = 1200;
  private static final double SECONDS = 10;
  private static final double SOLVED = 0.9;

  private final List<String> quarrels = new ArrayList<>();
  private int solved;

  @Test
  @Tag("heavy")
  void theyAgreeOnSmallSets() {
    for (int seed = 0; seed < SMALL; seed++) {
      compare(RandomSets.any(seed, 3 + seed % 2, 6 + seed % 3));
    }
    assertAgreement(SMALL);
  }

  @Test
  @Tag("heavy")
  void theyAgreeOnManySets() {
    for (int seed = SMALL; seed < SMALL + MANY; seed++) {
      compare(RandomSets.any(seed, 3 + seed % 3, 6 + seed % 4));
    }
    assertAgreement(MANY);
  }

  private void assertAgreement(int sets) {
    assertEquals(List.of(), quarrels, "out of " + solved + " sets solved");
    assertTrue(solved >= SOLVED * sets, "only " + solved + " of " + sets + " solved");
  }

  private void compare(Sample sample) {
    Answer answer = CpSatOracle.solve(sample.set(), sample.start(), SECONDS);
    if (answer.state() == Answer.State.OPTIMAL) {
      solved++;
      Options options = Options.defaults().withStart(sample.start());
      compare(sample, answer, Planner.plan(sample.set(), options));
    }
  }

  private void compare(Sample sample, Answer answer, Result result) {
    if (!(result instanceof Result.Planned planned)) {
      quarrels.add(sample + ": " + result);
      return;
    }
    Plan plan = planned.plan();
    List<String> complaints = Verifier.verify(plan);
    if (!complaints.isEmpty()) {
      quarrels.add(sample + ": " + complaints);
    }
    if (plan.moves() != answer.moves() || plan.setUpMoves() != answer.setUpMoves()) {
      quarrels.add(
          "%s: %d and %d moves, the fewest are %d and %d"
              .formatted(
                  sample, plan.moves(), plan.setUpMoves(), answer.moves(), answer.setUpMoves()));
    }
    if (planned.lowerBound() > answer.moves()
        || (planned.proven() && planned.setUpLowerBound() > answer.setUpMoves())) {
      quarrels.add(
          "%s: bounds %d and %d, the fewest are %d and %d"
              .formatted(
                  sample,
                  planned.lowerBound(),
                  planned.setUpLowerBound(),
                  answer.moves(),
                  answer.setUpMoves()));
    }
  }
}
