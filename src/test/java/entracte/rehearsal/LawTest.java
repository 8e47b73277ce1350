package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.rehearsal.Law.Family;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Laws of learning against published exercises, and how they are told apart. */
class LawTest {
  /**
   * The unit form of T. P. Wright's learning curve, J. Aeronautical Sciences 3 (1936): at a rate of
   * r each doubling takes r of the time, so the exponent is -log2 r. Answers as printed at cram.com
   * "Technical Supplement 3 Learning Curves" (80 %), homeworksource.com/p/1108983 (95 %),
   * bestessayservices.com (80 %, 85 %) and validtests.com (80 %, after Chase, Jacobs and Aquilano
   * 2006).
   */
  @ParameterizedTest
  @CsvSource({
    "0.80, 100, 2, 80, 0.001",
    "0.80, 100, 4, 64, 0.001",
    "0.80, 100, 8, 51.2, 0.001",
    "0.95, 500, 7, 432.94, 0.01",
    "0.80, 20, 5, 11.914, 0.002",
    "0.85, 300, 10, 174.83, 0.02",
    "0.80, 30, 8, 15.36, 0.001"
  })
  void thePowerLawGivesTheTextbookAnswers(
      double rate, double first, int n, double time, double rounding) {
    Law law = Law.power(-Math.log(rate) / Math.log(2));
    assertEquals(time, first * law.part(n), rounding);
  }

  @Test
  void theExponentialLawFallsToItsFloor() {
    Law law = Law.exponential(0.6, 0.5);
    assertEquals(1, law.part(1), 1e-12);
    assertEquals(0.6 + 0.4 * Math.exp(-0.5), law.part(2), 1e-12);
    assertEquals(0.6, law.part(1000), 1e-12);
  }

  @Test
  void aTrainedHandIsWhereTheLogarithmIsZero() {
    Law.all().forEach(w -> assertEquals(0, w.law().log(Law.TRAINED), 1e-12));
  }

  @Test
  void theWeightsOfAllShapesSumToOne() {
    assertEquals(1, Law.all().stream().mapToDouble(Law.Weighted::weight).sum(), 1e-12);
  }

  @Test
  void runsThatFollowAPowerLawSpeakForIt() {
    assertTrue(outlook(Law.power(0.5), 30).favours(Family.POWER) > 0.95);
  }

  @Test
  void runsThatFollowAnExponentialLawSpeakForIt() {
    assertTrue(outlook(Law.exponential(0.4, 0.2), 30).favours(Family.EXPONENTIAL) > 0.95);
  }

  @Test
  void beforeAnyRunNeitherLawIsFavoured() {
    assertEquals(0.5, outlook(Law.power(0.5), 0).favours(Family.POWER), 1e-12);
  }

  /** Runs exactly on the law, but for one in twenty either way in turn. */
  private static Outlook outlook(Law law, int runs) {
    List<Double> seconds =
        IntStream.rangeClosed(1, runs)
            .mapToObj(n -> 60 * law.part(n) * (n % 2 == 0 ? 1.05 : 0.95))
            .toList();
    return Outlook.of(40, 0.3, seconds);
  }
}
