package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The values are common practice; nobody was found who measured them. */
class EstimatedPaceTest {
  private final Pace pace = Pace.estimated();

  @Test
  void aRehearsedCordMoveTakesFourToFiveSeconds() {
    assertEquals(4.5, pace.seconds(step(Verb.MOVE, 2, 0, 0)));
  }

  @Test
  void crossingRowsTakesTwoSecondsMore() {
    assertEquals(6.5, pace.seconds(step(Verb.MOVE, 2, 0, 1)));
  }

  @Test
  void aCordFromTheBagIsFetchedFirst() {
    assertEquals(9, pace.seconds(step(Verb.PLUG, 2, 0, 0)));
    assertEquals(3, pace.seconds(step(Verb.PLUG, 1, 0)));
  }

  @Test
  void sixCordsEightKnobsAndOneOscillatorTakeAboutAMinute() {
    double seconds =
        Stream.of(
                Collections.nCopies(6, step(Verb.MOVE, 2, 0, 0)),
                Collections.nCopies(8, step(Verb.TURN, 1, 0)),
                List.of(step(Verb.TUNE, 0, 0)))
            .flatMap(List::stream)
            .mapToDouble(pace::seconds)
            .sum();
    assertTrue(seconds > 55 && seconds < 75, "took " + seconds);
  }

  private static Step step(Verb verb, int moves, int... rows) {
    List<Spot> reach =
        java.util.Arrays.stream(rows).mapToObj(row -> new Spot("module", row, 3, 0)).toList();
    return new Step(verb, verb + " something", "", moves, reach, 0, false);
  }
}
