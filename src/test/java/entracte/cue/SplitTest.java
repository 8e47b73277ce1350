package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SplitTest {
  /**
   * The voltage divider R / (R + r) worked out by hand for 1 kohm into n inputs of 100 kohm; that
   * one input makes an octave an eighth of a semitone too narrow is published (a discussion of 1
   * kohm outputs on 100 kohm inputs).
   */
  @ParameterizedTest
  @CsvSource({"1, 0.99, 12", "2, 1.96, 24", "3, 2.91, 35", "4, 3.85, 46"})
  void aPassiveSplitNarrowsTheOctave(int inputs, double percent, long cents) {
    double passes = passes(1000, Collections.nCopies(inputs, 100_000.0));
    assertEquals(percent, 100 * (1 - passes), 0.005);
    assertEquals(cents, Math.round(Split.narrower(passes)));
  }

  /** The same divider at 100 ohm: 1.2 cents for one input, 4.8 for four. */
  @Test
  void aLowerResistanceLosesLess() {
    assertEquals(1.2, Split.narrower(passes(100, List.of(1e5))), 0.01);
    assertEquals(4.8, Split.narrower(passes(100, Collections.nCopies(4, 1e5))), 0.02);
  }

  /**
   * Each input's own cord alone is the measure. With load r/R = 0.01 each, by hand: 1 - 1.01 / 1.02
   * = 0.98 % of 1200 cents is 11.76; three give 1 - 1.01 / 1.03 (23.3), four 1 - 1.01 / 1.04
   * (34.6).
   */
  @ParameterizedTest
  @CsvSource({"1, 0", "2, 11.76", "3, 23.30", "4, 34.62"})
  void anOscillatorIsTrimmedWithItsCordAlone(int inputs, double cents) {
    Split split = new Split(1000, Collections.nCopies(inputs, 1e5));
    assertEquals(cents, Split.narrower(split.kept(1e5)), 0.005);
  }

  /**
   * 1 kohm into 20 and 50 kohm: loads of 0.05 and 0.02, together 1.07. The one kept 1.05 / 1.07 of
   * what it was trimmed by, the other 1.02 / 1.07: 22.4 and 56.1 cents of 1200.
   */
  @Test
  void ofUnequalInputsTheLighterOneLosesMore() {
    Split split = new Split(1000, List.of(20_000.0, 50_000.0));
    assertEquals(22.43, Split.narrower(split.kept(20_000)), 0.005);
    assertEquals(56.07, Split.narrower(split.kept(50_000)), 0.005);
  }

  @Test
  void nothingToSplitIsNoSplit() {
    assertThrows(IllegalArgumentException.class, () -> new Split(1000, List.of()));
  }

  private static double passes(double ohmsOut, List<Double> ohmsIn) {
    return new Split(ohmsOut, ohmsIn).passes();
  }

  /** 1/12 V = 83.3333 mV a semitone (a published mailing-list thread); 0.1 V at 1.2 V an octave. */
  @Test
  void aKeyIsATwelfthOfAnOctave() {
    assertEquals(83.3333, new KeyStep(1, 1, 1).millivoltsPerKey(), 0.0001);
    assertEquals(100, new KeyStep(1, 1.2, 1.2).millivoltsPerKey(), 1e-9);
    assertEquals(100, new KeyStep(1, 1.2, 1.2).centsPerKey(), 1e-9);
  }

  /**
   * Half the voltage is 24 steps to the octave of 50 cents, quarter tones (published, and sums).
   */
  @Test
  void halfTheVoltageGivesQuarterTones() {
    assertEquals(50, new KeyStep(0.5, 1, 1).centsPerKey(), 1e-9);
    assertEquals(0.5, new KeyStep(1, 1, 1).factorFor(50), 1e-9);
  }
}
