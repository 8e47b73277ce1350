package entracte.plan.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.plan.Plan;
import entracte.plan.Verifier;
import entracte.plan.sample.KnownSets;
import entracte.plan.sample.KnownSets.Known;
import entracte.plan.sample.RandomSets;
import entracte.plan.sample.Sample;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The reference solver knows what a person can work out, and its plans pass the verifier. */
final class OracleTest {
  private static final double EFFORT = 60;
  private static final int RANDOM = 10;

  static List<Known> knownSets() {
    return KnownSets.all();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("knownSets")
  void itFindsTheFewestMovesOfSetsThatAPersonCanSolve(Known known) {
    Sample sample = known.sample();
    Answer answer = CpSatOracle.solve(sample.set(), sample.start(), EFFORT);
    assertEquals(Answer.State.OPTIMAL, answer.state());
    assertEquals(
        List.of(known.moves(), known.setUpMoves()),
        List.of(answer.moves(), answer.setUpMoves()),
        known.why());
    assertJudged(answer);
  }

  @Test
  void itsPlansOfRandomSetsPassTheVerifier() {
    int solved = 0;
    for (int seed = 0; seed < RANDOM; seed++) {
      Sample sample = RandomSets.any(seed, 3, 6 + seed % 3);
      Answer answer = CpSatOracle.solve(sample.set(), sample.start(), EFFORT);
      if (answer.state() == Answer.State.OPTIMAL) {
        assertJudged(answer);
        solved++;
      }
    }
    assertEquals(RANDOM, solved, "solved to the end");
  }

  private static void assertJudged(Answer answer) {
    Plan plan = answer.plan().orElseThrow();
    assertEquals(List.of(), Verifier.verify(plan));
    assertEquals(
        List.of(answer.moves(), answer.setUpMoves()), List.of(plan.moves(), plan.setUpMoves()));
  }
}
