package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class PitchTest {
  /** Cents by the list of 5-limit intervals (Wikipedia): 9/8 is 203.91, 16/15 is 111.73. */
  @Test
  void centsOfPublishedRatios() {
    assertEquals(203.91, new Pitch(8, 9).cents(), 0.005);
    assertEquals(111.73, new Pitch(15, 16).cents(), 0.005);
  }

  /** Beats of a tempered fifth: 3 x 440 - 2 x 659.2551, computed from f = 440 x 2^(n/12). */
  @Test
  void aTemperedFifthBeatsSlowly() {
    Pitch fifth = new Pitch(440, 440 * Math.pow(2, 7 / 12.0));
    assertEquals(
        "7 semitones above low (ratio 1.498; 1.49 beats a second against a pure 3 to 2)",
        fifth.words("above low"));
  }

  @Test
  void aDetunedUnisonBeatsByItsDifference() {
    assertEquals(
        "0.08 semitones above low (ratio 1.005; 2 beats a second against unison)",
        new Pitch(440, 442).words("above low"));
  }

  @Test
  void aSemitoneHasNoPureNeighbour() {
    assertEquals(
        "1 semitone below x (ratio 1.059)",
        new Pitch(440, 440 * Math.pow(2, 1 / 12.0)).words("below x"));
  }

  @Test
  void theLowerPitchComesFirst() {
    assertThrows(IllegalArgumentException.class, () -> new Pitch(660, 440));
  }
}
