package entracte.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two oscillators, where the patch sets them and what it tunes them to. */
class AttunedTest {
  private static final String RIG =
      """
      rig: Shelf
      kinds:
        keyboard: {out: [pitch x2, other pitch]}
        oscillator:
          in: [pitch]
          out: [saw]
          knobs: {tune: -7..7}
          switches: {octave: [32, 16, 8, 4]}
        slew limiter: {in: [in], out: [out]}
        output: {in: [in x2]}
      rows:
        - - keys: keyboard
          - osc 1: oscillator
          - osc 2: oscillator
          - slew: slew limiter
          - main: output
      """;

  private static final String SAME = "keys.pitch 1: low.pitch, keys.pitch 2: high.pitch";
  private static final String ADVICE =
      " / Set the octave or the tune of one of the two otherwise, or change the wish.";

  @TempDir Path folder;

  @Test
  void whatTheSettingsGiveIsNotTold() throws IOException {
    assertEquals(List.of(), said(SAME, "{octave: 8, tune: 0}", "{octave: 8, tune: 7}"));
    assertEquals(List.of(), said(SAME, "{octave: 16, tune: 5}", "{octave: 8, tune: 0}"));
  }

  /** A pure fifth is 702 cents (3:2, the published list of five-limit intervals). */
  @Test
  void anOctaveThatIsThrownWrongIsTold() throws IOException {
    assertEquals(
        List.of(
            "\"high\" is to be pure fifth above low, and octave and tune put it 19 semitones above"
                + " \"low\""
                + ADVICE),
        said(SAME, "{octave: 16, tune: 0}", "{octave: 8, tune: 7}"));
    assertEquals(
        List.of(
            "\"high\" is to be pure fifth above low, and octave and tune put it in unison with"
                + " \"low\""
                + ADVICE),
        said(SAME, "{octave: 8, tune: 2}", "{octave: 8, tune: 2}"));
  }

  @Test
  void aKnobThatMayStandAnywhereCanBeTurnedThere() throws IOException {
    assertEquals(List.of(), said(SAME, "{octave: 8, tune: 0}", "{octave: 8}"));
    assertEquals(List.of(), said(SAME, "{octave: 8, tune: 0}", "{octave: 8, tune: 5 +-2}"));
    assertEquals(1, said(SAME, "{octave: 32, tune: 0}", "{octave: 8}").size());
  }

  @Test
  void whatHangsOnAnotherPitchMayStandAnywhere() throws IOException {
    String two = "keys.pitch 1: low.pitch, keys.other pitch: high.pitch";
    assertEquals(List.of(), said(two, "{octave: 16, tune: 0}", "{octave: 8, tune: 7}"));
    String bent = "keys.pitch 1: low.pitch, keys.pitch 2: slew.in, slew.out: high.pitch";
    assertEquals(List.of(), said(bent, "{octave: 16, tune: 0}", "{octave: 8, tune: 7}"));
  }

  private List<String> said(String pitches, String low, String high) throws IOException {
    String patch =
        """
        patch: p
        roles: {low: oscillator, high: oscillator}
        connections: {PITCHES, low.saw: main.in 1, high.saw: main.in 2}
        settings: {low: LOW, high: HIGH}
        tune: {high: pure fifth above low}
        """
            .replace("PITCHES", pitches)
            .replace("LOW", low)
            .replace("HIGH", high);
    return OneSong.findings(folder, RIG, patch).stream()
        .map(f -> f.message() + " / " + f.advice())
        .toList();
  }
}
