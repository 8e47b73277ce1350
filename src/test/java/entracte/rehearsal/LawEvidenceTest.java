package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Two changeovers of one player: whoever learns one quickly is expected to learn the other so. */
class LawEvidenceTest {
  private static final List<Double> QUICK = List.of(80.0, 58.0, 48.0, 42.0, 38.0, 35.0);
  private static final List<Double> STEADY = List.of(40.0, 41.0, 39.0, 40.0, 40.0, 40.0);

  private static List<Law.Weighted> laws(List<Double> ofTheOther) {
    LawEvidence evidence = new LawEvidence();
    evidence.add("other", 40, 0.2, ofTheOther);
    return evidence.laws("this");
  }

  private static double seventh(List<Law.Weighted> laws) {
    return Outlook.of(40, 0.2, List.of(60.0, 52.0), laws).typical(5);
  }

  @Test
  void whatTheOtherChangeoverShowsOfTheLawsCountsForThisOne() {
    double unknown = seventh(Law.all());
    assertTrue(seventh(laws(QUICK)) < 0.98 * unknown, seventh(laws(QUICK)) + " of " + unknown);
    assertTrue(seventh(laws(STEADY)) > 1.02 * unknown, seventh(laws(STEADY)) + " of " + unknown);
  }

  @Test
  void itsOwnRunsAreNotCountedTwice() {
    LawEvidence evidence = new LawEvidence();
    evidence.add("this", 40, 0.2, QUICK);
    List<Law.Weighted> laws = evidence.laws("this");
    for (int i = 0; i < laws.size(); i++) {
      assertEquals(Law.all().get(i).weight(), laws.get(i).weight(), 1e-12);
    }
  }

  @Test
  void theWeightsSumToOne() {
    double sum = laws(QUICK).stream().mapToDouble(Law.Weighted::weight).sum();
    assertEquals(1, sum, 1e-12);
  }
}
