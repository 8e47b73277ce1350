package entracte.setlist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DistanceTest {
  /**
   * Wikipedia, list of intervals in 5-limit just intonation (to a hundredth of a cent): 16/15 and
   * 9/8; just intonation ratio calculator of calculatorhub.com: 3/2, 5/4, 6/5, 5/3. The fourth is
   * the octave less the fifth, 1200 - 701.955.
   */
  @ParameterizedTest
  @CsvSource({
    "pure minor second, 111.73",
    "pure major second, 203.91",
    "pure minor third, 315.64",
    "pure major third, 386.31",
    "a pure fourth, 498.045",
    "a pure fifth, 701.96",
    "pure major sixth, 884.36",
    "3:2, 701.96",
    "5 : 4, 386.31"
  })
  void pureIntervalsHaveTheirPublishedCents(String written, double cents) {
    assertEquals(cents, Distance.parse(written).orElseThrow().cents(), 0.006);
  }

  /** A semitone is a hundred cents by definition; a major tenth is 16 of them (music theory). */
  @ParameterizedTest
  @CsvSource({
    "unison, 0",
    "fifth, 700",
    "tempered fifth, 700",
    "an octave, 1200",
    "major tenth, 1600",
    "twelfth, 1900",
    "two octaves, 2400",
    "7 semitones, 700",
    "0.5 semitones, 50",
    "8 cents, 8"
  })
  void temperedIntervalsAreWholeSemitones(String written, double cents) {
    assertEquals(cents, Distance.parse(written).orElseThrow().cents(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"a bit", "fifths", "3:0", "2:3", "seven semitones", "-3 cents", "''"})
  void whatIsNoDistanceIsNone(String written) {
    assertEquals(Optional.empty(), Distance.parse(written));
  }

  @Test
  void anIntervalIsSaidWithItsArticleAndItsTemper() {
    assertEquals("a pure fifth", Distance.parse("pure fifth").orElseThrow().words());
    assertEquals("a tempered fifth", Distance.parse("fifth").orElseThrow().words());
    assertEquals("an octave", Distance.parse("octave").orElseThrow().words());
    assertEquals("the ratio 7 to 4", Distance.parse("7:4").orElseThrow().words());
  }

  @Test
  void aWishNamesItsReference() {
    TunedTo wish = TunedTo.parse("a pure fifth  below bass line").orElseThrow();
    assertTrue(wish instanceof TunedTo.From from && from.role().equals("bass line"));
    assertEquals(-701.955, ((TunedTo.From) wish).cents(), 0.001);
    TunedTo unison = TunedTo.parse("unison with bass").orElseThrow();
    assertEquals(0, ((TunedTo.From) unison).cents());
    assertEquals(Optional.empty(), TunedTo.parse("fifth of bass"));
  }

  /** Twelve equal steps: 24 to the octave are quarter tones of 50 cents (definition). */
  @Test
  void aScaleIsCentsFromKeyToKey() {
    assertEquals(50, KeyScale.parse("quarter tones").orElseThrow().cents());
    assertEquals(50, KeyScale.parse("24 per octave").orElseThrow().cents());
    assertEquals(33.5, KeyScale.parse("33.5 cents").orElseThrow().cents());
    assertEquals(Optional.empty(), KeyScale.parse("0 per octave"));
    assertEquals(Optional.empty(), KeyScale.parse("narrow"));
  }
}
