package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class LegibilityTest {
  /** NUREG-0700 rev. 2, 1.3.1-4: height = 6.283 D (MA) / 21600, with MA in minutes of arc. */
  @Test
  void heightsAgreeWithTheFormulaOfNureg0700() {
    for (double distance : List.of(500.0, 700.0, 1000.0, 1600.0, 2000.0)) {
      for (double arc : List.of(16.0, 20.0, 22.0)) {
        double published = 6.283 * distance * arc / 21600;
        assertEquals(published, Legibility.capitalMm(distance, arc), 0.001);
      }
    }
  }

  /**
   * ISO 9241-3 as a distance: 155 to 175 times the height of a character
   * (liquidcrystaltechnologies.com/tech_support/CharacterHeight.htm).
   */
  @Test
  void theUsualLetterLiesWhereIso9241WantsIt() {
    double times = 1000 / new Legibility(1000, false).capitalMm();
    assertTrue(times >= 155 && times <= 175, "distance is " + times + " letters");
  }

  /** ISO 9241-3 (as quoted at pc.ibm.com healthycomputing): 20 to 22 preferred, 16 at least. */
  @Test
  void nothingIsSmallerThanTheLeastThatIsoAllows() {
    assertTrue(Legibility.ARC_MINUTES >= 20 && Legibility.ARC_MINUTES <= 22);
    assertEquals(16, Legibility.LEAST_ARC_MINUTES);
  }

  @Test
  void dimLightAsksForHalfAsMuchAgain() {
    double bright = new Legibility(700, false).capitalMm();
    assertEquals(1.5 * bright, new Legibility(700, true).capitalMm(), 1e-9);
  }

  @Test
  void nobodyReadsFromNowhere() {
    assertThrows(IllegalArgumentException.class, () -> new Legibility(0, false));
    assertThrows(IllegalArgumentException.class, () -> new Legibility(Double.NaN, false));
  }
}
