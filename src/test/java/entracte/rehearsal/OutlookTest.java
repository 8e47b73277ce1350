package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutlookTest {
  private static final List<Double> STEADY = Collections.nCopies(12, 40.0);

  @Test
  void theOddsOfTheMiddleAreEven() {
    Outlook outlook = Outlook.of(45, 0.3, List.of(52.0, 47.5, 44.0));
    assertEquals(0.5, outlook.odds(outlook.typical(1), 1), 1e-9);
    assertEquals(0.9, outlook.odds(outlook.below(0.9, 1), 1), 1e-9);
  }

  @Test
  void manyLikeRunsLeaveLittleDoubt() {
    Outlook outlook = Outlook.of(60, 0.3, STEADY);
    assertEquals(40, outlook.typical(1), 1.5);
    assertTrue(outlook.odds(50, 1) > 0.9, "odds " + outlook.odds(50, 1));
    assertTrue(outlook.odds(30, 1) < 0.05, "odds " + outlook.odds(30, 1));
  }

  @Test
  void fewRunsGiveMoreCarefulOddsThanMany() {
    Outlook few = Outlook.of(40, 0.3, STEADY.subList(0, 2));
    Outlook many = Outlook.of(40, 0.3, STEADY);
    assertTrue(few.odds(50, 1) < many.odds(50, 1));
  }

  @Test
  void withoutARunTheFirstIsExpectedToTakeLongerThanATrainedHand() {
    Outlook outlook = Outlook.of(40, 0.3, List.of());
    assertTrue(outlook.typical(1) > 40);
    assertEquals(40, outlook.typical(Law.TRAINED), 1e-6);
  }

  @Test
  void whereNothingMovesNoTimePasses() {
    Outlook outlook = Outlook.of(0, 0.3, List.of());
    assertEquals(0, outlook.typical(1));
    assertEquals(1, outlook.odds(0, 1));
    assertEquals(0, outlook.over(0, 1));
  }

  @Test
  void theSpreadAgreesWithTheOdds() {
    Outlook outlook = Outlook.of(45, 0.3, List.of(52.0, 47.5, 44.0, 46.0));
    double within =
        outlook.spread(1).stream()
            .filter(c -> c.seconds() <= 50)
            .mapToDouble(Outlook.Chance::weight)
            .sum();
    assertEquals(outlook.odds(50, 1), within, 0.02);
    assertEquals(1, outlook.spread(1).stream().mapToDouble(Outlook.Chance::weight).sum(), 1e-9);
  }

  @Test
  void whatRunsOverIsWhatIsExpectedAboveTheGap() {
    Outlook outlook = Outlook.of(45, 0.3, List.of(52.0, 47.5, 44.0));
    assertEquals(outlook.expected(1), outlook.over(0, 1), 1e-9);
    assertTrue(outlook.over(50, 1) < outlook.over(40, 1));
  }

  @Test
  void whoMakesTheGapAlreadyNeedsNoMoreRuns() {
    Needed needed = Needed.of(Outlook.of(40, 0.3, STEADY), 60, 0.9);
    assertEquals(new Needed(0, 0, 0, 1), rounded(needed));
  }

  @Test
  void whoLearnsNeedsSomeRunsAndNobodyKnowsExactlyHowMany() {
    List<Double> learning = List.of(80.0, 69.0, 63.0, 59.5);
    Needed needed = Needed.of(Outlook.of(50, 0.3, learning), 55, 0.8);
    assertTrue(needed.likely() > 0 && needed.likely() < Needed.MOST, needed.toString());
    assertTrue(needed.few() <= needed.likely() && needed.likely() <= needed.many());
    assertTrue(needed.many() > needed.few(), needed.toString());
  }

  @Test
  void aGapFarTooShortIsOutOfReach() {
    Needed needed = Needed.of(Outlook.of(40, 0.3, STEADY), 8, 0.8);
    assertEquals(Needed.MOST, needed.likely());
    assertTrue(needed.chance() < 0.05, needed.toString());
  }

  private static Needed rounded(Needed needed) {
    return new Needed(
        needed.few(), needed.likely(), needed.many(), Math.round(needed.chance() * 1e6) / 1e6);
  }
}
