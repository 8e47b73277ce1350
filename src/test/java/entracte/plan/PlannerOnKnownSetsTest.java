package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.plan.sample.KnownSets;
import entracte.plan.sample.KnownSets.Known;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The planner on sets of which a person can work out the fewest moves. */
final class PlannerOnKnownSetsTest {
  static List<Known> knownSets() {
    return KnownSets.all();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("knownSets")
  void itFindsTheFewestMoves(Known known) {
    Options options = Options.defaults().withStart(known.sample().start());
    Result result = Planner.plan(known.sample().set(), options);
    Result.Planned planned = assertInstanceOf(Result.Planned.class, result);
    assertEquals(List.of(), Verifier.verify(planned.plan()));
    assertEquals(
        List.of(known.moves(), known.setUpMoves()),
        List.of(planned.plan().moves(), planned.plan().setUpMoves()),
        known.why());
    assertTrue(planned.lowerBound() <= known.moves(), "no bound above what can be done");
  }
}
