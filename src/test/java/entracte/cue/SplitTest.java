package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import entracte.rig.GainStep;
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
    Split split = new Split(1000, Collections.nCopies(inputs, 100_000.0));
    assertEquals(percent, 100 * split.loss(), 0.005);
    assertEquals(cents, Math.round(split.flatCentsPerOctave()));
  }

  /** The same divider at 100 ohm: 1.2 cents for one input, 4.8 for four. */
  @Test
  void aLowerResistanceLosesLess() {
    assertEquals(1.2, new Split(100, List.of(1e5)).flatCentsPerOctave(), 0.01);
    assertEquals(4.8, new Split(100, Collections.nCopies(4, 1e5)).flatCentsPerOctave(), 0.02);
  }

  @Test
  void oneCordAloneIsWhatTheOscillatorIsTrimmedFor() {
    assertEquals(0, new Split(1000, List.of(1e5)).flatterThanAlone());
    assertThrows(IllegalArgumentException.class, () -> new Split(1000, List.of()));
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

  /** 20 log10: factor 10 is 20 dB, factor 2 is 6.02 dB (J. O. Smith, Mathematics of the DFT). */
  @ParameterizedTest
  @CsvSource({"x1, 0", "x2, 6.0206", "x 10, 20", "x100, 40", "x0.5, -6.0206", "20 dB, 20"})
  void gainsAreDecibels(String position, double decibels) {
    double factor = GainStep.factor(position).orElseThrow();
    assertEquals(decibels, GainStep.decibels(factor), 0.00005);
    assertEquals(factor, GainStep.factorOf(decibels), 0.0001);
  }

  @ParameterizedTest
  @CsvSource({"low", "16", "4-pole", "x0", "10"})
  void otherPositionsAreNoGain(String position) {
    assertEquals(true, GainStep.factor(position).isEmpty());
  }
}
