package entracte.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of a kind's jacks and knobs, of the songs as a list, and of names that are long. */
class KindsAndSongsTest {
  private static final String LONG = "n".repeat(201);

  @TempDir Path folder;

  private String rig = "rig: Shelf";
  private String oscillator = "{in: [pitch], out: [saw], knobs: {tune: -7..7}}";
  private String kinds = "";
  private String modules = "";
  private String patch = "patch: p";
  private String cords = "keys.pitch: osc 1.pitch\n  osc 1.saw: main.in";
  private String set = "set: s";
  private String songs = "\n  - {song: a, patch: p.yaml}";

  @Test
  void nothingIsWrongToBeginWith() throws IOException {
    assertEquals(List.of(), said());
  }

  @Test
  void aKindSaysThingsOfItsOwnJacksAndKnobsOnly() throws IOException {
    oscillator = "{in: [pitch], out: [saw], knobs: {tune: -7..7}, signals: {audio: swa}}";
    assertEquals(List.of("error: signals: \"oscillator\" has no jack \"swa\""), said());
    oscillator = "{in: [pitch], out: [saw], knobs: {tune: -7..7}, attenuates: {level: linear}}";
    assertEquals(List.of("error: attenuates: \"oscillator\" has no knob \"level\""), said());
    oscillator = "{in: [pitch], out: [saw], knobs: {tune: -7..7}, played by: {saw: pitch}}";
    assertEquals(List.of(), said());
    oscillator = "{in: [pitch], out: [saw], knobs: {tune: -7..7}, played by: {saw: hand}}";
    assertEquals(List.of("error: played by: \"oscillator\" has no jack \"hand\""), said());
  }

  @Test
  void onlyAMultipleCanBeBuffered() throws IOException {
    oscillator = "{in: [pitch], out: [saw], buffered: yes}";
    assertEquals(List.of("warning: buffered: \"oscillator\" is no multiple"), said());
    oscillator = "{in: [pitch], out: [saw]}";
    kinds = "\n  multiple: {taps: 4, buffered: yes}";
    modules = "\n    - mult 1: multiple";
    assertEquals(List.of(), said());
  }

  @Test
  void theFallbackIsASongOfTheSet() throws IOException {
    set = "set: s\nfallback: b";
    assertEquals(List.of("error: the fallback \"b\" is no song of the set"), said());
    set = "set: s\nfallback: a";
    assertEquals(List.of(), said());
  }

  @Test
  void encoresStandLast() throws IOException {
    songs =
        "\n  - {song: a, patch: p.yaml, encore: yes}\n  - {song: b, patch: p.yaml}"
            + "\n  - {song: c, patch: p.yaml, encore: yes}";
    assertEquals(List.of("error: \"b\" stands after an encore"), said());
  }

  /** What nothing comes into, and what has a pitch input, is a voice. */
  @Test
  void aPatchOfWhichNothingIsHeardIsToldSo() throws IOException {
    kinds = "\n  noise: {out: [white]}\n  amp: {in: [audio], out: [out]}";
    modules = "\n    - noise 1: noise\n    - amp 1: amp";
    cords = "noise 1.white: amp 1.audio";
    assertEquals(
        List.of("error: no voice of this patch is heard: \"amp 1\" leads to no output of the rig"),
        said());
    String unheard = "warning: \"amp 1\" is never heard: it leads to no output of the rig";
    cords = "noise 1.white: main.in\n  keys.pitch: osc 1.pitch\n  osc 1.saw: amp 1.audio";
    assertEquals(List.of(unheard), said());
    cords = "noise 1.white: amp 1.audio\n  keys.pitch: osc 1.pitch\n  osc 1.saw: main.in";
    assertEquals(List.of(unheard), said());
    cords = "noise 1.white: main.in";
    assertEquals(List.of(), said());
  }

  @Test
  void everyNameHasItsLimit() throws IOException {
    rig = "rig: " + LONG;
    assertEquals(List.of("error: the name of the rig has 201 letters"), said());
    rig = "rig: Shelf";
    kinds = "\n  " + LONG + ": {out: [out]}";
    assertEquals(List.of("error: the name of a kind has 201 letters"), said());
    kinds = "";
    modules = "\n    - " + LONG + ": oscillator";
    assertEquals(List.of("error: the name of a module has 201 letters"), said());
    modules = "";
    patch = "patch: " + LONG;
    assertEquals(List.of("error: the name of a patch has 201 letters"), said());
    patch = "patch: p";
    set = "set: " + LONG;
    assertEquals(List.of("error: the name of the set has 201 letters"), said());
  }

  private List<String> said() throws IOException {
    String whole =
        rig
            + "\nkinds:\n  keyboard: {out: [pitch]}\n  output: {in: [in]}\n  oscillator: "
            + oscillator
            + kinds
            + "\nrows:\n  - - keys: keyboard\n    - osc 1: oscillator\n    - main: output"
            + modules
            + "\n";
    return OneSong.findings(
            folder,
            whole,
            patch + "\nconnections:\n  " + cords + "\n",
            set + "\nrig: rig.yaml\nsongs:" + songs + "\n")
        .stream()
        .map(f -> f.severity().word() + ": " + f.message())
        .toList();
  }
}
