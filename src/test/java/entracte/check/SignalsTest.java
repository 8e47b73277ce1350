package entracte.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.finding.Finding;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the kinds say of their jacks, and what is plugged to what. */
class SignalsTest {
  private static final String RIG =
      """
      rig: Shelf
      kinds:
        keyboard: {out: [pitch, gate], signals: {pitch: pitch, gate: gate}}
        oscillator: {in: [pitch, fm], out: [saw], signals: {pitch: pitch, audio: saw}}
        envelope: {in: [gate], out: [out], signals: {gate: gate, control: out}}
        amplifier: {in: [audio, cv], out: [out], leaves: [out], signals: {audio: [audio, out]}}
      rows:
        - - keys: keyboard
          - osc: oscillator
          - env: envelope
          - amp: amplifier
      """;

  @TempDir Path folder;

  private List<Integer> lines = List.of();

  @Test
  void aGateInAnAudioInputIsToldOf() throws IOException {
    assertEquals(
        List.of(
            "\"gate\" of \"keys\" gives gate, and \"audio\" of \"amp\" takes audio / If that is"
                + " meant, leave one of the two jacks out of the \"signals\" of its kind."),
        said(RIG, "keys.pitch: osc.pitch", "osc.saw: amp.cv", "keys.gate: amp.audio"));
  }

  @Test
  void theWarningStandsAtTheConnection() throws IOException {
    said(RIG, "keys.pitch: osc.pitch", "osc.saw: amp.cv", "keys.gate: amp.audio");
    assertEquals(List.of(5), lines);
  }

  @Test
  void audioInAGateInputIsToldOf() throws IOException {
    assertEquals(
        List.of(
            "\"saw\" of \"osc\" gives audio, and \"gate\" of \"env\" takes gate / If that is meant,"
                + " leave one of the two jacks out of the \"signals\" of its kind."),
        said(RIG, "keys.pitch: osc.pitch", "osc.saw: env.gate", "env.out: amp.cv"));
  }

  @Test
  void audioIntoAModulationInputIsHowBellsAreMade() throws IOException {
    assertEquals(List.of(), said(RIG, "keys.pitch: osc.pitch", "osc.saw: amp.audio"));
    assertEquals(List.of(), said(RIG, "keys.pitch: osc.pitch", "osc.saw: amp.cv"));
  }

  @Test
  void signalsNameJacksOfTheKind() throws IOException {
    assertEquals(
        List.of("signals: \"oscillator\" has no jack \"saww\" / Did you mean \"saw\"?"),
        said(
            RIG.replace("audio: saw}", "audio: saww}"),
            "keys.pitch: osc.pitch",
            "osc.saw: amp.audio"));
  }

  private List<String> said(String rig, String... cords) throws IOException {
    String patch = "patch: p\nconnections:\n  " + String.join("\n  ", cords) + "\n";
    List<Finding> found = OneSong.findings(folder, rig, patch);
    lines = found.stream().map(each -> each.place().line()).toList();
    return found.stream().map(f -> f.message() + " / " + f.advice()).toList();
  }
}
