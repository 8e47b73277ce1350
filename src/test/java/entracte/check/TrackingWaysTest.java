package entracte.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How far a key goes behind knobs and gain steps; a key of one volt an octave goes 100 cents. */
class TrackingWaysTest {
  private static final String RIG =
      """
      rig: Shelf
      kinds:
        keyboard: {out: [pitch, gate], signals: {pitch: pitch, gate: gate}}
        oscillator: {in: [pitch], out: [saw]}
        scaler:
          channels: {count: 2, in: [in], out: [out], knobs: {amount: 2..12}}
          attenuates: {amount: linear}
        turner: {in: [in], out: [out], knobs: {amount: -5..5}, attenuates: {amount: linear}}
        booster: {in: [in], out: [out], switches: {gain: [x1, x2]}}
        multiple: {taps: 4}
        output: {in: [in x2]}
      rows:
        - - keys: keyboard
          - osc 1: oscillator
          - osc 2: oscillator
          - scale 1: scaler
          - turn 1: turner
          - boost 1: booster
          - mult 1: multiple
          - main: output
      """;

  private static final String[] SCALED = {
    "keys.pitch: scale 1.a.in", "scale 1.a.out: osc 1.pitch", "osc 1.saw: main.in"
  };

  private static final String[] TURNED = {
    "keys.pitch: turn 1.in", "turn 1.out: osc 1.pitch", "osc 1.saw: main.in"
  };

  @TempDir Path folder;

  /** Seven is half way from two to twelve, four a fifth. */
  @Test
  void aScaleNeedNotBeginAtZero() throws IOException {
    assertEquals(List.of("50 cents at \"osc 1\""), keys("scale 1.a: {amount: 7}", SCALED));
    assertEquals(List.of("20 cents at \"osc 1\""), keys("scale 1.a: {amount: 4}", SCALED));
    assertEquals(List.of(), keys("scale 1.a: {amount: 12}", SCALED));
  }

  /** A hundred is within 5 % of what 11.5 passes, 95, and not of what 11 passes, 90. */
  @Test
  void aMultipleMayTakeALittle() throws IOException {
    assertEquals(List.of(), keys("scale 1.a: {amount: 11.5}", SCALED));
    assertEquals(List.of("90 cents at \"osc 1\""), keys("scale 1.a: {amount: 11}", SCALED));
    assertEquals(List.of(), keys("scale 1.a: {amount: 11 +-1}", SCALED));
  }

  @Test
  void eachChannelHasAKnobOfItsOwn() throws IOException {
    assertEquals(
        List.of("50 cents at \"osc 2\""),
        keys(
            "scale 1.a: {amount: 12}, scale 1.b: {amount: 7}",
            "keys.pitch: [scale 1.a.in, scale 1.b.in]",
            "scale 1.a.out: osc 1.pitch",
            "scale 1.b.out: osc 2.pitch",
            "osc 1.saw: main.in",
            "osc 2.saw: main.in 2"));
  }

  @Test
  void twoOnTheWayMultiply() throws IOException {
    assertEquals(
        List.of("25 cents at \"osc 1\""),
        keys(
            "scale 1.a: {amount: 7}, scale 1.b: {amount: 7}",
            "keys.pitch: scale 1.a.in",
            "scale 1.a.out: scale 1.b.in",
            "scale 1.b.out: osc 1.pitch",
            "osc 1.saw: main.in"));
  }

  @Test
  void aKnobWithZeroInTheMiddlePassesAsMuchToEitherSide() throws IOException {
    assertEquals(List.of(), keys("turn 1: {amount: 5}", TURNED));
    assertEquals(List.of(), keys("turn 1: {amount: -5}", TURNED));
    assertEquals(List.of("50 cents at \"osc 1\""), keys("turn 1: {amount: -2.5}", TURNED));
    assertEquals(List.of("0 cents at \"osc 1\""), keys("turn 1: {amount: 0}", TURNED));
    assertEquals(List.of(), keys("turn 1: {amount: -4.5 +-0.5}", TURNED));
    assertEquals(List.of(), keys("turn 1: {amount: 4.5 +-0.5}", TURNED));
  }

  @Test
  void aGainStepMakesAKeyGoFurther() throws IOException {
    String[] boosted = {"keys.pitch: boost 1.in", "boost 1.out: osc 1.pitch", "osc 1.saw: main.in"};
    assertEquals(List.of("200 cents at \"osc 1\""), keys("boost 1: {gain: x2}", boosted));
    assertEquals(List.of(), keys("boost 1: {gain: x1}", boosted));
  }

  /** Half of twice as much is as much. */
  @Test
  void aGainStepMendsWhatAnAttenuatorTakes() throws IOException {
    assertEquals(
        List.of(),
        keys(
            "boost 1: {gain: x2}, scale 1.a: {amount: 7}",
            "keys.pitch: boost 1.in",
            "boost 1.out: scale 1.a.in",
            "scale 1.a.out: osc 1.pitch",
            "osc 1.saw: main.in"));
  }

  /** A gate may go to a pitch input: as a jump, not as a scale. */
  @Test
  void whatIsNoPitchHasNoScale() throws IOException {
    assertEquals(
        List.of(),
        keys(
            "scale 1.a: {amount: 7}",
            "keys.gate: scale 1.a.in",
            "scale 1.a.out: osc 1.pitch",
            "osc 1.saw: main.in"));
  }

  private List<String> keys(String settings, String... cords) throws IOException {
    String patch =
        "patch: p\nconnections:\n  %s\nsettings: {%s}\n"
            .formatted(String.join("\n  ", cords), settings);
    return OneSong.findings(folder, RIG, patch).stream()
        .map(finding -> finding.message())
        .filter(message -> message.startsWith("a key goes "))
        .map(message -> message.substring("a key goes ".length(), message.indexOf(',')))
        .toList();
  }
}
