package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.plan.sample.FullSets;
import entracte.plan.sample.Sample;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The casting that a search begins with")
class FirstCastingTest {
  /** Roles to modules in the order of the rig set 13 jumpers two ways in the second of these. */
  @ParameterizedTest(name = "sets no jumper two ways in {1} songs on {2} modules (seed {0})")
  @CsvSource({"1, 20, 24", "1, 30, 40", "2, 12, 20", "3, 8, 14"})
  void setsEachJumperOneWay(long seed, int songs, int modules) {
    Sample sample = FullSets.loose(seed, songs, modules);
    Problem problem = new Problem(sample.set(), sample.start());
    FirstCasting.Found.Cast cast = (FirstCasting.Found.Cast) new FirstCasting(problem).find();
    assertEquals(0, new Layout(problem, cast.casting()).faults());
  }
}
