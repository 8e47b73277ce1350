package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.rehearsal.Mtm.Way;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Motion times against worked examples that others published. */
class MtmTest {
  private static double inches(double inches) {
    return inches * Mtm.CM_PER_INCH;
  }

  /**
   * A part is fetched, brought and placed: R16C, G4A, M10B5, RL1, R14B, G1B, M8C3, P1NSE, RL1. The
   * exercise is from M. P. Groover, <em>Work Systems</em>, chapter 14; its total of 86.4 TMU, 3.1
   * s, is published at smart.gov.qa, and 3.11184 s in scribd.com/document/830678549. G4A, G1B and
   * P1NSE are data card values that no patching needs.
   */
  @Test
  void theWorkedExampleComesToItsPublishedTotal() {
    double g4a = 7.3;
    double g1b = 3.5;
    double p1nse = 10.4;
    double dynamic = 1.06;
    double fixed = 2.2;
    double tmu =
        Mtm.over(Way.REACH_C, inches(16))
            + g4a
            + Mtm.weighted(Mtm.over(Way.MOVE_B, inches(10)), dynamic, fixed)
            + Mtm.RELEASE
            + Mtm.over(Way.REACH_B, inches(14))
            + g1b
            + Mtm.weighted(Mtm.over(Way.MOVE_C, inches(8)), dynamic, fixed)
            + p1nse
            + Mtm.RELEASE;
    assertEquals(86.4, tmu, 0.05);
    assertEquals(3.11184, Mtm.seconds(tmu), 1e-9);
  }

  /**
   * Single reaches in centimetres with their answers, scribd.com/document/537306451 "Ejercicios de
   * MTM". They come from the metric card, so ours, from the inch card, may differ by its rounding.
   */
  @ParameterizedTest
  @CsvSource({
    "REACH_B, 40, 15.6",
    "REACH_C, 28, 13.6",
    "REACH_C, 26, 13.0",
    "REACH_B, 30, 12.8",
    "REACH_B, 95, 31.1",
    "REACH_C, 40, 16.8",
    "REACH_B, 70, 24.1",
    "REACH_C, 70, 25.0"
  })
  void singleReachesTakeTheirPublishedTimes(Way way, double cm, double tmu) {
    assertEquals(tmu, Mtm.over(way, cm), 0.15);
  }

  /** Linear between the rows: R11B lies between 11.5 and 12.9 (the method's rule, from memory). */
  @Test
  void distancesBetweenRowsAreInterpolated() {
    assertEquals(12.2, Mtm.over(Way.REACH_B, inches(11)), 1e-9);
  }

  /** Beyond 30 inches each inch adds its increment: 25.8 + 10 x 0.7. */
  @Test
  void beyondTheTableEachInchAddsTheSame() {
    assertEquals(32.8, Mtm.over(Way.REACH_B, inches(40)), 1e-9);
  }

  /** MTM-1 data card 2019 (MTM Association), scribd.com/document/685645331: small turns. */
  @ParameterizedTest
  @CsvSource({"30, 2.8", "90, 5.4", "180, 9.4", "10, 2.8"})
  void turnsTakeTheTimesOfTheDataCard(double degrees, double tmu) {
    assertEquals(tmu, Mtm.turn(degrees), 1e-9);
  }

  /** The card ends at 180 degrees: T180S 9.4, regrasp 5.6, T120S 6.8. */
  @Test
  void aWholeSweepIsTwoTurnsWithARegrasp() {
    assertEquals(21.8, Mtm.turn(300), 1e-9);
  }
}
