package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.setlist.Distance;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BeatTest {
  /** 440 x 3/2 = 660 Hz (calculatorhub.com, just intonation ratios): a pure fifth is still. */
  @Test
  void aPureFifthDoesNotBeat() {
    Beat beat = Beat.near(701.955).orElseThrow();
    assertEquals(new Beat(3, 2), beat);
    assertEquals(0, beat.perSecond(440, 660), 1e-9);
  }

  /** Worked out from f = 440 x 2^(n/12): 2 x 659.2551 against 3 x 440. */
  @Test
  void aTemperedFifthBeatsSlowly() {
    double fifth = 440 * Math.pow(2, 7 / 12.0);
    assertEquals(1.49, Beat.near(700).orElseThrow().perSecond(440, fifth), 0.005);
  }

  /** One beat a second is 3.9 cents at 440 Hz, 7.9 at 220 and 15.7 at 110 (1200 log2(1 + 1/f)). */
  @Test
  void aBeatASecondIsMoreCentsTheLowerItLies() {
    assertEquals(3.9, Distance.centsOf(441 / 440.0), 0.05);
    assertEquals(7.9, Distance.centsOf(221 / 220.0), 0.06);
    assertEquals(15.7, Distance.centsOf(111 / 110.0), 0.05);
    assertEquals(1 / 3.93, new Beat(1, 1).perSecondForACent(440), 0.001);
  }

  @Test
  void itSaysWhichHarmonicsToHear() {
    assertEquals(
        "harmonic 2 of osc 3 against harmonic 3 of osc 1", new Beat(3, 2).words("osc 1", "osc 3"));
    assertEquals("osc 3 against harmonic 2 of osc 1", new Beat(2, 1).words("osc 1", "osc 3"));
    assertEquals("osc 3 against osc 1", new Beat(1, 1).words("osc 1", "osc 3"));
  }

  /** 7:5 is 582.51 cents, 9:5 1017.60 (Wikipedia, List of pitch intervals). */
  @Test
  void aTritoneLiesNearSevenToFiveAndAMinorSeventhNearNineToFive() {
    assertEquals(new Beat(7, 5), Beat.near(600).orElseThrow());
    assertEquals(582.51, new Beat(7, 5).cents(), 0.005);
    assertEquals(new Beat(9, 5), Beat.near(1017.60).orElseThrow());
    assertEquals(new Beat(9, 5), Beat.near(1000).orElseThrow());
  }

  /** 11:8 is 551.32 cents, 16:9 996.09 (the same list). */
  @Test
  void aRatioThatIsMeantIsMetHoweverHighItsHarmonics() {
    assertEquals(new Beat(11, 8), Beat.near(551.32).orElseThrow());
    assertEquals(new Beat(16, 9), Beat.near(996.09).orElseThrow());
  }

  @Test
  void aSemitoneIsNearNothing() {
    assertEquals(Optional.empty(), Beat.near(60));
  }

  /**
   * 5 x 622.254 - 7 x 440 = 31.27, from f = 440 x 2^(n/12); at the pure 616 Hz a cent is 616 x 5 x
   * (2^(1/1200) - 1) = 1.78.
   */
  @Test
  void whatBeatsTooFastToCountIsReachedOverThePureInterval() {
    assertEquals(
        "31.27 beats a second, too fast to count: come near a pure 7 to 5, where a cent is 1.78"
            + " beats a second",
        new Beat(7, 5).count(440, 440 * Math.sqrt(2)));
  }

  @Test
  void oneBeatIsOne() {
    assertEquals("1 beat a second against unison", new Beat(1, 1).against(440, 441));
  }
}
