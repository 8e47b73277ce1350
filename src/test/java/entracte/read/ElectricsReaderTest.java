package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.rig.Electrics;
import entracte.rig.Signal;
import entracte.rig.Taper;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a kind says of voltages and loads. */
class ElectricsReaderTest {
  @TempDir Path folder;

  private ReadSet read(String electrics) {
    return Folder.ofRig(
            folder,
            "rig: R\nkinds:\n  k:\n    out: [o, p]\n    knobs: {a: 0..10, b: 0..10, c: 0..10}\n    "
                + electrics
                + "\nrows: [[m: k]]\n")
        .read();
  }

  private Electrics electrics(String electrics) {
    ReadSet read = read(electrics);
    assertEquals(List.of(), new Folder(folder).lines(read.findings()));
    return read.setList().orElseThrow().rig().kinds().get(0).electrics();
  }

  private void says(String electrics, String expected) {
    assertEquals(List.of(expected), new Folder(folder).lines(read(electrics).findings()));
  }

  @Test
  void aResistanceIsPlainOrInThousandsOrMillions() {
    assertEquals(OptionalDouble.of(470), electrics("ohms in: 470").ohmsIn());
    assertEquals(OptionalDouble.of(1_000), electrics("ohms out: 1k").ohmsOut());
    assertEquals(OptionalDouble.of(47_500), electrics("ohms in: 47.5 k").ohmsIn());
    assertEquals(OptionalDouble.of(1e6), electrics("ohms in: 1 Mohms").ohmsIn());
    assertEquals(OptionalDouble.of(600), electrics("ohms out: 600 ohm").ohmsOut());
    assertEquals(OptionalDouble.empty(), electrics("buffered: no").ohmsIn());
  }

  @Test
  void whatIsNoResistance() {
    String advice = " is no resistance in ohms | Write it like 1k or 100k.";
    says("ohms in: much", "rig.yaml:6:14: \"much\"" + advice);
    says("ohms in: 0k", "rig.yaml:6:14: \"0k\"" + advice);
    says("ohms out: 1000000", "rig.yaml:6:15: \"1000000\"" + advice);
    says("ohms out: 1 K", "rig.yaml:6:15: \"1 K\"" + advice);
  }

  @Test
  void anOctaveHasAVoltage() {
    assertEquals(OptionalDouble.of(1.2), electrics("volts per octave: 1.2").voltsPerOctave());
    String advice = " is no voltage of an octave | Write it like 1 or 1.2.";
    says("volts per octave: 0", "rig.yaml:6:23: \"0\"" + advice);
    says("volts per octave: 1 V", "rig.yaml:6:23: \"1 V\"" + advice);
    says("volts per octave: 10", "rig.yaml:6:23: \"10\"" + advice);
  }

  @Test
  void eachSignalHasItsJacks() {
    assertEquals(
        Map.of("o", Signal.AUDIO, "p", Signal.PITCH),
        electrics("signals: {audio: o, pitch: [p]}").signals());
    says(
        "signals: {adio: o}",
        "rig.yaml:6:15: \"adio\" is not known here | Did you mean \"audio\"?");
  }

  @Test
  void eachKnobHasItsTaper() {
    assertEquals(
        Map.of("a", Taper.LINEAR, "b", Taper.AUDIO, "c", Taper.UNKNOWN),
        electrics("attenuates: {a: linear, b: audio, c: unknown}").attenuates());
    says(
        "attenuates: {a: liner}",
        "rig.yaml:6:21: \"liner\" is no taper of a knob | Did you mean \"linear\"?");
  }

  @Test
  void handsPlayJacks() {
    assertEquals(
        Map.of("wheel", List.of("o"), "left hand", List.of("o", "p")),
        electrics("played by: {left hand: [o, p], wheel: o}").playedBy());
  }

  @Test
  void aMultipleMayBeBuffered() {
    assertTrue(electrics("buffered: yes").buffered());
    assertFalse(electrics("buffered: no").buffered());
  }
}
