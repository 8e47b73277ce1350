package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two oscillators by the wave that each is plugged with. Which harmonics a wave has: the Fourier
 * series of the square, triangle and sawtooth wave (Wolfram MathWorld): a sawtooth has all, square
 * and triangle only odd ones; a sine is its own first.
 */
class WavesTest {
  private static final String RIG =
      """
      rig: Shelf
      kinds:
        keyboard: {out: [pitch x3]}
        oscillator:
          in: [pitch, fm]
          out: [saw, pulse, triangle, sine]
          knobs: {tune: -7..7, width: 0..10}
          switches: {octave: [16, 8, 4]}
        output: {in: [in x3]}
      rows:
        - - osc 1: oscillator
          - osc 2: oscillator
          - keys: keyboard
          - main: output
      """;

  private static final String TWO =
      """
      roles: {low: osc 1, high: osc 2}
      connections:
        keys.pitch 1: low.pitch
        keys.pitch 2: high.pitch
        low.LOW: main.in
        high.HIGH: TO
      settings: {low: {octave: 8, tune: 0}, high: {octave: 8, tune: 7, width: WIDTH}}
      """;

  private static final String USE = ", so nothing beats: use a tuner";

  @TempDir Path folder;
  private int width = 5;

  private Cue cue(String low, String high, String to, String more) {
    String song =
        TWO.replace("LOW", low)
            .replace("HIGH", high)
            .replace("TO", to)
            .replace("WIDTH", Integer.toString(width));
    return new CraftFiles(folder, RIG).song(song + more).papers().sheet().cues().get(0);
  }

  private String tuned(String low, String high, String wish) {
    String more = "tune: {high: " + wish + " above low}";
    String line = cue(low, high, "main.in", more).ear().targets().get(2);
    return line.substring(line.indexOf("): ") + "): ".length());
  }

  @Test
  void aSineHasItsFirstHarmonicAlone() {
    assertEquals("the sine of osc 1 has no harmonic 3" + USE, tuned("sine", "saw", "pure fifth"));
    assertEquals("the sine of osc 2 has no harmonic 2" + USE, tuned("saw", "sine", "pure fifth"));
    assertEquals(
        "osc 2 against harmonic 3 of osc 1, no beat; a cent changes that by 0.76",
        tuned("saw", "sine", "3:1"));
  }

  @Test
  void aTriangleHasTheOddOnes() {
    assertEquals(
        "the triangle of osc 2 has no harmonic 2" + USE, tuned("saw", "triangle", "pure fifth"));
    assertEquals(
        "harmonic 3 of osc 2 against harmonic 5 of osc 1, no beat; a cent changes that by 1.27",
        tuned("triangle", "triangle", "5:3"));
  }

  @Test
  void aPulseIsASquareWhereItsWidthStandsInTheMiddle() {
    assertEquals(
        "the square pulse of osc 2 has no harmonic 4" + USE,
        tuned("saw", "pulse", "pure major third"));
    width = 3;
    assertEquals(
        "harmonic 4 of osc 2 against harmonic 5 of osc 1, no beat; a cent changes that by 1.27",
        tuned("saw", "pulse", "pure major third"));
  }

  @Test
  void whatOnlyShakesAnotherBeatsWithNothing() {
    Cue cue = cue("saw", "sine", "low.fm", "");
    assertEquals(
        "osc 2: 659.26 Hz, 7 semitones above osc 1 (ratio 1.498; osc 2 is not heard by itself"
            + USE
            + ")",
        cue.ear().targets().get(2));
    assertTrue(cue.ear().before().contains("hear osc 2 by a spare cord from its output"));
  }

  @Test
  void whatOnlyShakesAnotherIsNotListenedToAlone() {
    String song = TWO.replace("LOW", "saw").replace("HIGH", "sine").replace("TO", "low.fm");
    Paperwork papers = new CraftFiles(folder, RIG).song(song.replace("WIDTH", "5")).papers();
    assertEquals(
        List.of("osc 1 plays low, from keys pitch 1, through main"),
        papers.songs().get(0).voices());
  }
}
