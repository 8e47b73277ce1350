package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What two or three oscillators are tuned to, in sets written out. */
class TuningTargetsTest {
  private static final String RIG =
      """
      rig: Shelf
      kinds:
        keyboard: {out: [pitch x3]}
        oscillator: {in: [pitch], out: [saw], knobs: {tune: -7..7}, switches: {octave: [16, 8, 4]}}
        output: {in: [in x3]}
      rows:
        - - osc 1: oscillator
          - osc 2: oscillator
          - osc 3: oscillator
          - keys: keyboard
          - main: output
      """;

  private static final String TWO =
      """
      roles: {low: osc 2, high: osc 1}
      connections:
        keys.pitch 1: low.pitch
        keys.pitch 2: high.pitch
        low.saw: main.in
        high.saw: main.in
      settings: {low: {octave: 8}, high: {octave: 8}}
      """;

  @TempDir Path folder;

  /** 440 x 3/2 = 660 Hz and 701.96 cents: calculatorhub.com, just intonation ratios. */
  @Test
  void aPureFifthStandsStillAndComesAfterItsReference() {
    assertEquals(
        List.of(
            "with A4, the A above middle C, held (440 Hz)",
            "osc 2: 440 Hz",
            "osc 1: 660 Hz, a pure fifth above osc 2 (701.96 cents, ratio 1.5): harmonic 2 of osc"
                + " 1 against harmonic 3 of osc 2, no beat; a cent changes that by"
                + " 0.76"),
        tuning("tune: {high: pure fifth above low}"));
  }

  /** 2 x 659.2551 - 3 x 440 = 1.49, from f = 440 x 2^(n/12). */
  @Test
  void aTemperedFifthBeats() {
    assertEquals(
        "osc 1: 659.26 Hz, a tempered fifth above osc 2 (700 cents, ratio 1.498): harmonic 2 of osc"
            + " 1 against harmonic 3 of osc 2, 1.49 beats a second; a cent changes that by"
            + " 0.76",
        tuning("tune: {high: fifth above low}").get(2));
  }

  @Test
  void belowTurnsTheHarmonicsRound() {
    assertEquals(
        "osc 1: 220 Hz, an octave below osc 2 (1200 cents, ratio 2): osc 2 against harmonic 2 of"
            + " osc 1, no beat; a cent changes that by 0.25",
        tuning("tune: {high: octave below low}").get(2));
  }

  /** 442 Hz is in use by orchestras; D4 is 5/12 of an octave... 442 x 2^(-7/12) = 295.0 Hz. */
  @Test
  void theSetSaysItsAAndTheKeyThatIsHeld() {
    CraftFiles files = new CraftFiles(folder, RIG).line("A4: 442").line("tune on: D4").song(TWO);
    List<String> tuning = files.papers().songs().get(0).tuning();
    assertEquals("with D4 held (295 Hz)", tuning.get(0));
    assertEquals("osc 1: 295 Hz", tuning.get(1));
  }

  /** E2 is key 40, 82.41 Hz (published tables of note frequencies; A320304 rounds it to 82). */
  @Test
  void aNoteIsTheSameWhateverKeyIsHeld() {
    CraftFiles files =
        new CraftFiles(folder, RIG).line("tune on: D4").song(TWO + "tune: {low: E2}");
    assertEquals("osc 2: E2, 82.41 Hz", files.papers().songs().get(0).tuning().get(2));
  }

  @Test
  void theStepSaysToWhatAndTheReferenceIsTunedFirst() {
    CraftFiles files = new CraftFiles(folder, RIG).song(TWO + "tune: {high: fifth above low}");
    assertEquals(
        List.of(
            "TUNE osc 2 (plays for the first time)",
            "TUNE osc 1 to a tempered fifth above osc 2 (plays for the first time)"),
        tuneSteps(files, 0));
  }

  @Test
  void whatHangsOnAMovedReferenceIsTunedAgainAndTheRestIsTrusted() {
    String wish = "tune: {high: fifth above low}\n";
    CraftFiles files =
        new CraftFiles(folder, RIG)
            .song(TWO + wish)
            .song(TWO.replace("low: {octave: 8}", "low: {octave: 16}") + wish)
            .song(TWO.replace("octave: 8", "octave: 16") + wish);
    assertEquals(
        List.of(
            "TUNE osc 2 (octave changed)",
            "TUNE osc 1 to a tempered fifth above osc 2 (osc 2 is tuned anew)"),
        tuneSteps(files, 1));
    assertEquals(
        List.of("TUNE osc 1 to a tempered fifth above osc 2 (octave changed)"),
        tuneSteps(files, 2));
    assertEquals(List.of("osc 2"), files.papers().sheet().cues().get(2).ear().trusted());
  }

  /**
   * 440 x 2^(7/12) = 659.255 Hz; 6 x 440 x 2^(4/12) - 5 x 659.255 = 29.92; at the pure 6/5 x
   * 554.365 Hz a cent is 5 x 665.238 x (2^(1/1200) - 1) = 1.92.
   */
  @Test
  void whatCanBeTrustedIsTheMeasureOfTheOthers() {
    String song = TWO.replace("low: {octave: 8}", "low: {octave: 8, tune: 4}");
    CraftFiles files =
        new CraftFiles(folder, RIG)
            .song(song.replace("high: {octave: 8}", "high: {octave: 8, tune: 0}"))
            .song(song.replace("high: {octave: 8}", "high: {octave: 8, tune: 7}"));
    List<Cue> cues = files.papers().sheet().cues();
    assertEquals(List.of("osc 2"), cues.get(1).ear().trusted());
    assertEquals(
        "osc 1: 659.26 Hz, 3 semitones above osc 2 (ratio 1.189; 29.92 beats a second, too fast to"
            + " count: come near a pure 6 to 5, where a cent is 1.92 beats a second)",
        cues.get(1).ear().targets().get(1));
  }

  @Test
  void whatIsNotHeardIsNotTuned() {
    CraftFiles files = new CraftFiles(folder, RIG).song(TWO.replace("high.saw: main.in", ""));
    assertEquals(List.of("TUNE osc 2 (plays for the first time)"), tuneSteps(files, 0));
    assertEquals(
        List.of("with A4, the A above middle C, held (440 Hz)", "osc 2: 440 Hz"),
        files.papers().songs().get(0).tuning());
  }

  /** 440 x 2^(8/1200) - 440 = 2.04 beats, and 440 x 9/5 = 792 Hz. */
  @Test
  void aSizeIsNotSaidTwice() {
    assertEquals(
        "osc 1: 442.04 Hz, 8 cents above osc 2 (ratio 1.005): osc 1 against osc 2, 2.04 beats a"
            + " second; a cent changes that by 0.26",
        tuning("tune: {high: 8 cents above low}").get(2));
    assertEquals(
        "osc 1: 792 Hz, the ratio 9 to 5 above osc 2 (1017.6 cents): harmonic 5 of osc 1 against"
            + " harmonic 9 of osc 2, no beat; a cent changes that by 2.29",
        tuning("tune: {high: 9:5 above low}").get(2));
  }

  @Test
  void theStepsSayWhatToTuneToAndTheFirstHowToHearIt() {
    CraftFiles files = new CraftFiles(folder, RIG).song(TWO + "tune: {high: E5}");
    List<Cue> cues = files.papers().sheet().cues();
    assertEquals(
        List.of("main level still down, headphones up from zero, or a tuner"),
        cues.get(0).ear().before());
    List<List<String>> notes =
        cues.get(0).steps().stream()
            .filter(step -> step.verb() == Verb.TUNE)
            .map(Step::notes)
            .toList();
    String held = "; with A4 held (440 Hz)";
    assertEquals(
        List.of(
            List.of(
                "Before: main level still down, headphones up from zero, or a tuner",
                "E5, 659.26 Hz" + held),
            List.of(
                "440 Hz, 7 semitones below osc 1 (ratio 1.498; 1.49 beats a second against a"
                    + " pure 3 to 2)"
                    + held)),
        notes);
  }

  /** 440 x 2^(7/12) = 659.26 Hz. */
  @Test
  void whatWaitsInPlaceIsTunedInTheSetUpAndTrustedLater() {
    String one =
        """
        roles: {low: osc 2}
        connections: {keys.pitch 1: low.pitch, low.saw: main.in}
        settings: {low: {octave: 8, tune: 0}}
        """;
    String wish = "tune: {high: fifth above low}\n";
    CraftFiles files = new CraftFiles(folder, RIG).song(one).song(TWO + wish);
    List<Cue> cues = files.papers().sheet().cues();
    assertEquals(
        List.of(
            "TUNE osc 2 (plays for the first time)",
            "TUNE osc 1 to a tempered fifth above osc 2 (waits as its first song wants it)"),
        tuneSteps(files, 0));
    assertTrue(
        cues.get(0).ear().targets().get(2).startsWith("osc 1: for song 2, 659.26 Hz, a tempered"));
    assertEquals(List.of(), tuneSteps(files, 1));
  }

  /** 659.255 / 220 = 2.997; 659.255 - 3 x 220 = -0.745, from f = 440 x 2^(n/12). */
  @Test
  void whatWaitsIsMeasuredAgainstWhatStandsInTheSetUp() {
    String one =
        """
        roles: {low: osc 2}
        connections: {keys.pitch 1: low.pitch, low.saw: main.in}
        settings: {low: {octave: 16, tune: 0}}
        """;
    String two = TWO.replace("high: {octave: 8}", "high: {octave: 8, tune: 7}");
    CraftFiles files = new CraftFiles(folder, RIG).song(one).song(two);
    assertEquals(
        "osc 1: for song 2, 659.26 Hz, 19 semitones above osc 2 (ratio 2.997; 0.74 beats a second"
            + " against a pure 3 to 1)",
        files.papers().sheet().cues().get(0).ear().targets().get(2));
  }

  /** 5/4 is the pure major third of five-limit tuning (Wikipedia, List of pitch intervals). */
  @Test
  void aWishInOtherWordsForTheSamePitchCostsNoStep() {
    CraftFiles files =
        new CraftFiles(folder, RIG)
            .song(TWO + "tune: {high: pure major third above low}")
            .song(TWO + "tune: {high: 5:4 above low}");
    assertEquals(List.of(), tuneSteps(files, 1));
    List<String> trusted = files.papers().sheet().cues().get(1).ear().trusted();
    assertEquals(List.of("osc 1", "osc 2"), trusted.stream().sorted().toList());
  }

  /** 45/32 is 590.22 cents (the same list), and 5 x 440 x 45/32 - 7 x 440 = 13.75 beats. */
  @Test
  void theTritoneIsNotCalledPure() {
    assertTrue(
        tuning("tune: {high: pure tritone above low}")
            .get(2)
            .startsWith("osc 1: 618.75 Hz, a tritone of 45 to 32 above osc 2 (590.22 cents"));
  }

  @Test
  void whatWaitsForAReferenceThatMovesIsTunedWithIt() {
    String one =
        """
        roles: {low: osc 2}
        connections: {keys.pitch 1: low.pitch, low.saw: main.in}
        settings: {low: {octave: 16}}
        """;
    String wish = "tune: {high: fifth above low}\n";
    CraftFiles files = new CraftFiles(folder, RIG).song(one).song(TWO + wish);
    assertEquals(List.of("TUNE osc 2 (plays for the first time)"), tuneSteps(files, 0));
    assertEquals(2, tuneSteps(files, 1).size());
  }

  private List<String> tuning(String wish) {
    return new CraftFiles(folder, RIG).song(TWO + wish).papers().songs().get(0).tuning();
  }

  private static List<String> tuneSteps(CraftFiles files, int cue) {
    return files.papers().sheet().cues().get(cue).steps().stream()
        .filter(step -> step.verb() == Verb.TUNE)
        .map(Step::text)
        .toList();
  }
}
