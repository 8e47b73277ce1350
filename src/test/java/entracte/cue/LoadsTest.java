package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pitches that lose something on their way, by voltage dividers worked out by hand. */
class LoadsTest {
  private static final String RIG =
      """
      rig: Shelf
      kinds:
        keyboard: {out: [pitch, envelope], ohms out: 1k}
        oscillator: {in: [pitch], out: [saw], switches: {octave: [16, 8, 4]}, ohms in: 50k}
        heavy oscillator: {in: [pitch], out: [saw], switches: {octave: [16, 8, 4]}, ohms in: 20k}
        odd oscillator: {in: [pitch], out: [saw], volts per octave: 1.2}
        attenuator:
          channels: {count: 2, in: [in], out: [out], knobs: {amount: 0..10}}
          attenuates: {amount: linear}
          ohms in: 50k
        multiple: {taps: 4}
        output: {in: [in x3]}
      rows:
        - - keys: keyboard
          - osc 1: oscillator
          - heavy 1: heavy oscillator
          - odd 1: odd oscillator
          - scale 1: attenuator
          - mult 1: multiple
          - main: output
      """;

  @TempDir Path folder;

  /** 1 - 1.02 / 1.07 of 1200 cents is 56.07; 1 - 1.05 / 1.07 of them is 22.43. */
  @Test
  void eachOfUnequalInputsIsMeasuredByItsOwnCordAlone() {
    Paperwork papers =
        song(
            """
            roles: {light: osc 1, heavy: heavy 1}
            connections:
              keys.pitch: [heavy.pitch, light.pitch]
              heavy.saw: main.in
              light.saw: main.in
            """);
    assertEquals(
        List.of(
            "osc 1: 2 inputs share keys pitch: an octave is 56 cents narrower than with its cord"
                + " alone",
            "heavy 1: 2 inputs share keys pitch: an octave is 22 cents narrower than with its cord"
                + " alone"),
        papers.songs().get(0).patchNotes().pitch());
    assertEquals(
        List.of(
            "heavy 1 is 22 cents an octave too narrow on a passive multiple: tune it in the middle"
                + " of what you play",
            "osc 1 is 56 cents an octave too narrow on a passive multiple: tune it in the middle of"
                + " what you play"),
        papers.sheet().cues().get(0).ear().mind());
  }

  /**
   * 1.02 / 1.04 of the voltage is left: 50 cents become 49.04, and 5 x 1.04 / 1.02 is 5.1. An
   * octave of the keys is 600 cents there, and loses 11.54.
   */
  @Test
  void aMultipleBeforeAnAttenuatorCountsAndTheKnobMakesUpForIt() {
    Paperwork papers =
        song(
            """
            roles: {plain: osc 1, quarter: heavy 1, halve: attenuator}
            connections:
              keys.pitch: [plain.pitch, halve.a.in]
              halve.a.out: quarter.pitch
              plain.saw: main.in
              quarter.saw: main.in
            settings: {halve.a: {amount: 5}}
            scale: {quarter: quarter tones}
            """);
    assertEquals(
        List.of(
            "heavy 1: keys pitch through scale 1, 0.4904 V an octave, 40.87 mV and 49.04 cents a"
                + " key",
            "heavy 1: for 50 cents a key scale 1 channel 1 amount at 5.1 of 10",
            "osc 1: 2 inputs share keys pitch: an octave is 23 cents narrower than with its cord"
                + " alone",
            "heavy 1: 2 inputs share keys pitch: an octave is 12 cents narrower than with its cord"
                + " alone"),
        papers.songs().get(0).patchNotes().pitch());
  }

  /** The cord of song 2 waits in the multiple and weighs: 1 - 1.02 / 1.07 of 1200 cents. */
  @Test
  void aCordThatWaitsInTheMultipleWeighsToo() {
    String one =
        """
        roles: {light: osc 1, split: mult 1}
        connections: {keys.pitch: split.tap 1, split.tap 2: light.pitch, light.saw: main.in}
        """;
    String two =
        one.replace("{light: osc 1,", "{light: osc 1, heavy: heavy 1,")
            .replace("light.saw", "split.tap 3: heavy.pitch, heavy.saw: main.in, light.saw");
    Paperwork papers = new CraftFiles(folder, RIG).song(one).song(two).papers();
    assertEquals(
        List.of(
            "osc 1 is 56 cents an octave too narrow on a passive multiple: tune it in the middle of"
                + " what you play"),
        papers.sheet().cues().get(0).ear().mind());
  }

  @Test
  void onlyWhatTheRigLeavesUnsaidIsAssumed() {
    Paperwork papers =
        song(
            """
            roles: {plain: osc 1, odd: odd 1}
            connections:
              keys.pitch: [plain.pitch, odd.pitch]
              plain.saw: main.in
              odd.saw: main.in
            """);
    List<String> lines = papers.songs().get(0).patchNotes().pitch();
    assertTrue(lines.get(1).endsWith("than with its cord alone (100 kohm in is assumed)"));
  }

  /** An octave of 1.2 V at 1 V: 1000 cents, 83.33 from key to key. */
  @Test
  void anOscillatorOfAnotherVoltageIsToldOf() {
    Paperwork papers =
        song(
            """
            roles: {odd: odd 1}
            connections: {keys.pitch: odd.pitch, odd.saw: main.in}
            """);
    assertEquals(
        List.of("odd 1: keys pitch, 1 V an octave, 83.33 mV and 83.33 cents a key"),
        papers.songs().get(0).patchNotes().pitch());
    assertEquals(
        List.of("odd 1 goes 83.33 cents a key: it takes 1.2 V an octave, and keys gives 1"),
        papers.sheet().cues().get(0).ear().mind());
  }

  private Paperwork song(String patch) {
    return new CraftFiles(folder, RIG).song(patch).papers();
  }
}
