package entracte.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Keys of one volt an octave, and what hangs on them. */
class TrackingTest {
  private static final String RIG =
      """
      rig: Shelf
      kinds:
        keyboard: {out: [pitch x2]}
        oscillator: {in: [pitch], out: [saw], knobs: {tune: -7..7}}
        odd oscillator: {in: [pitch], out: [saw], volts per octave: 1.2}
        low oscillator: {in: [pitch], out: [saw], volts per octave: 0.5}
        attenuator: {channels: {count: 2, in: [in], out: [out], knobs: {amount: 0..10}}}
        envelope: {in: [gate], out: [out]}
        output: {in: [in x2]}
      rows:
        - - keys: keyboard
          - osc 1: oscillator
          - odd 1: odd oscillator
          - low 1: low oscillator
          - scale 1: attenuator
          - env 1: envelope
          - main: output
      """;

  @TempDir Path folder;

  /** 1 V of 1.2 is 1000 cents an octave, 83.33 a key; 0.5 V of 1 V is the half. */
  @Test
  void anOscillatorOfAnotherVoltageIsToldAtItsConnection() throws IOException {
    assertEquals(
        List.of(
            "3: \"odd 1\" takes 1.2 V an octave, and \"keys\" gives 1: a key goes 83.33"
                + " cents / Play it from an output that gives as much, or correct \"volts per"
                + " octave\" of one of the two kinds."),
        said("keys.pitch: odd 1.pitch", "odd 1.saw: main.in"));
    assertEquals(
        List.of(
            "3: \"low 1\" takes 0.5 V an octave, and \"keys\" gives 1: a key goes 200"
                + " cents / Let an attenuator pass 50 % of it, or correct \"volts per octave\" of"
                + " one of the two kinds."),
        said("keys.pitch: low 1.pitch", "low 1.saw: main.in"));
  }

  @Test
  void anAttenuatorBetweenMayMendIt() throws IOException {
    String way = "keys.pitch: scale 1.a.in";
    assertEquals(List.of(), said(way, "scale 1.a.out: low 1.pitch", "low 1.saw: main.in"));
    scale = "{osc 1: quarter tones}";
    assertEquals(List.of(), said(way, "scale 1.a.out: osc 1.pitch", "osc 1.saw: main.in"));
  }

  @Test
  void aScaleThatNothingMakesIsTold() throws IOException {
    scale = "{osc 1: quarter tones}";
    assertEquals(
        List.of(
            "5: \"osc 1\" is to go 50 cents a key, and nothing on the way changes the 100"
                + " that come from \"keys\" / Put an attenuator on the way of its pitch, or leave"
                + " the wish out."),
        said("keys.pitch: osc 1.pitch", "osc 1.saw: main.in"));
    scale = "{osc 1: 150 cents}";
    assertEquals(
        List.of(
            "6: \"osc 1\" is to go 150 cents a key, and an attenuator only makes less of"
                + " the 100 that come from \"keys\" / Wish for less, or leave the wish out."),
        said("keys.pitch: scale 1.a.in", "scale 1.a.out: osc 1.pitch", "osc 1.saw: main.in"));
  }

  /** Eight tenths of 100 cents are 80. */
  @Test
  void aKnobThatIsSetBesideTheWishedScaleIsTold() throws IOException {
    String[] cords = {
      "keys.pitch: scale 1.a.in", "scale 1.a.out: osc 1.pitch", "osc 1.saw: main.in"
    };
    scale = "{osc 1: quarter tones}\nsettings: {scale 1.a: {amount: 8}}";
    assertEquals(
        List.of(
            "6: \"osc 1\" is to go 50 cents a key, and the knob on the way as it is set makes"
                + " it 80 / Set the knob otherwise, or change the wish."),
        said(cords));
    scale = "{osc 1: quarter tones}\nsettings: {scale 1.a: {amount: 5.1 +-0.1}}";
    assertEquals(List.of(), said(cords));
  }

  @Test
  void aPitchThatIsMadeLessWithoutAWishIsTold() throws IOException {
    scale = "{}\nsettings: {scale 1.a: {amount: 5}}";
    assertEquals(
        List.of(
            "4: a key goes 50 cents at \"osc 1\", as what is on the way of its pitch is set / If"
                + " that is meant, say so with scale; else set the knob or the gain step"
                + " otherwise."),
        said("keys.pitch: scale 1.a.in", "scale 1.a.out: osc 1.pitch", "osc 1.saw: main.in"));
  }

  @Test
  void nothingIsTunedAgainstAKeyboard() throws IOException {
    scale = "{}\ntune: {osc 1: fifth above keys}";
    assertEquals(
        List.of(
            "6: nothing can be tuned against \"keys\": it has nothing to tune: no pitch input, no"
                + " octave, no tune and no cutoff / Tune it against an oscillator, or to a note"
                + " such as E2."),
        said("keys.pitch: osc 1.pitch", "osc 1.saw: main.in"));
  }

  @Test
  void aWishForTheWrongRoleIsTold() throws IOException {
    scale = "{env 1: quarter tones}\ndrive: {osc 1: wanted}\ntune: {env 1: E2}";
    List<String> said =
        said("keys.pitch: osc 1.pitch", "osc 1.saw: main.in", "env 1.out: main.in 2");
    assertEquals(
        List.of(
            "8: \"env 1\" has nothing to tune: no pitch input, no octave, no tune and no"
                + " cutoff / Wish it for another role.",
            "6: \"env 1\" has no pitch input, so no key moves it / Wish it for another" + " role.",
            "7: \"osc 1\" has nothing to drive with: no gain step, and no knob for gain,"
                + " drive or level / Wish it for another role."),
        said.subList(0, 3));
  }

  private String scale = "{}";

  private List<String> said(String... cords) throws IOException {
    String patch =
        "patch: p\nconnections:\n  " + String.join("\n  ", cords) + "\nscale: " + scale + "\n";
    return OneSong.findings(folder, RIG, patch).stream()
        .map(f -> f.place().line() + ": " + f.message() + " / " + f.advice())
        .toList();
  }
}
