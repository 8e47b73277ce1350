package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.rig.Control;
import entracte.rig.Position;
import entracte.rig.Rig;
import entracte.rig.RigState;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Saved states: written, read back, and read as a musician may have changed them. */
final class RigStateTest {
  private static final String SAVED =
      """
      state: after Slack Water
      cords:
        mult 1.tap.1: mult 1.tap.2
        osc 1.saw: mix 1.2.in
        osc 2.pulse: osc 1.pitch.2
      lengths:
        mult 1.tap.1: 30 cm
        osc 1.saw: 90 cm
        osc 2.pulse: 30 cm
      positions:
        filter 1.cutoff: 6.5
        mix 1.2.level: 0
        osc 1.octave: 8
        osc 1.tune: '-0.123456'
      """;

  @TempDir Path folder;

  private Rig rig;

  @BeforeEach
  void readTheRig() {
    rig = Folder.nightFerry(folder).read().setList().orElseThrow().rig();
  }

  private ReadState read(String state) {
    Folder files = new Folder(folder).with("state.yaml", state);
    return RigStateReader.read(files.path("state.yaml"), rig);
  }

  private void says(String state, String... expected) {
    ReadState read = read("state: A\n" + state);
    assertEquals(List.of(expected), new Folder(folder).lines(read.findings()));
    assertTrue(read.state().isEmpty());
  }

  @Test
  void whatIsWrittenIsReadBack() {
    ReadState read = read(SAVED);
    assertEquals(List.of(), read.findings());
    assertEquals("after Slack Water", read.name());
    RigState state = read.state().orElseThrow();
    assertEquals(
        List.of(
            "mult 1.tap.1 to mult 1.tap.2",
            "osc 1.saw to mix 1.2.in",
            "osc 2.pulse to osc 1.pitch.2"),
        state.cords().stream().map(Object::toString).toList());
    assertEquals(List.of(30, 90, 30), state.lengthCm());
    assertEquals(4, state.positions().size());
    assertEquals(SAVED, RigStateWriter.write(read.name(), state));
  }

  @Test
  void everyControlOfTheRigIsReadBackExactly() {
    Map<Control, Position> positions = new HashMap<>();
    for (Control control : rig.modules().stream().flatMap(m -> m.controls().stream()).toList()) {
      positions.put(
          control,
          control
              .scale()
              .<Position>map(s -> new Position.At(s.low() + (s.high() - s.low()) / 3))
              .orElseGet(() -> new Position.Thrown(control.positions().get(0))));
    }
    assertEquals(21, positions.size());
    RigState state = new RigState(List.of(), List.of(), positions);
    assertEquals(state, read(RigStateWriter.write("x", state)).state().orElseThrow());
  }

  @Test
  void namesThatYamlWouldTakeForSomethingElseAreQuoted() {
    for (String name : List.of("- a: b # c", "it's", "\"a\"", "{x}", "a:", " ", "*x", "ö ~")) {
      ReadState read = read(RigStateWriter.write("n" + name, RigState.bare()));
      assertEquals(List.of(), read.findings());
      assertEquals(("n" + name).strip(), read.name());
      read = read(RigStateWriter.write(name + "n", RigState.bare()));
      assertEquals((name + "n").strip(), read.name());
    }
  }

  @Test
  void aStateMayBeBare() {
    assertEquals(RigState.bare(), read("state: A\n").state().orElseThrow());
  }

  @Test
  void aCordWithoutLengthIsTheShortestThatReachesAndIsLeft() {
    StringBuilder cords = new StringBuilder("state: A\ncords:\n");
    List<String> sinks = new ArrayList<>();
    for (String in : List.of("fm", "sync", "pitch.1", "pitch.2")) {
      sinks.addAll(List.of("osc 1." + in, "osc 2." + in, "osc 3." + in));
    }
    List<String> sources = new ArrayList<>();
    for (String out : List.of("saw", "pulse", "sine")) {
      sources.addAll(List.of("osc 1." + out, "osc 2." + out, "osc 3." + out));
    }
    sources.add("mix 1.out");
    for (int i = 0; i < sources.size(); i++) {
      cords.append("  ").append(sources.get(i)).append(": ").append(sinks.get(i)).append('\n');
    }
    cords.append("  filter 1.out: filter 2.audio\n");
    RigState state = read(cords.toString()).state().orElseThrow();
    // Nine within the top row and one within the lower need 10 to 25 cm; one needs both rows.
    assertEquals(List.of(30, 30, 30, 30, 30, 30, 30, 30, 30, 60, 30), state.lengthCm());
  }

  @Test
  void whereTheStockIsShortTheLongerCordsServe() {
    StringBuilder rigText =
        new StringBuilder(
            "rig: R\nkinds: {k: {in: i, out: o}}\ncords: {20 cm: 2, 90 cm: 1}\nrows:\n");
    rigText.append("- [a1: k, b1: k, a2: k, b2: k, a3: k, b3: k, a4: k, b4: k]\n");
    rig =
        new Folder(folder)
            .with("r.yaml", rigText.toString())
            .with("set.yaml", "set: A\nrig: r.yaml\n")
            .read()
            .setList()
            .orElseThrow()
            .rig();
    assertEquals(
        List.of(20, 20, 90),
        read("state: A\ncords: {a1.o: b1.i, a2.o: b2.i, a3.o: b3.i}\n")
            .state()
            .orElseThrow()
            .lengthCm());
    assertEquals(
        List.of(20, 90, 20),
        read("state: A\ncords: {a1.o: b1.i, a2.o: b4.i, a3.o: b3.i}\n")
            .state()
            .orElseThrow()
            .lengthCm());
    says(
        "cords: {a1.o: b1.i, a2.o: b2.i, a3.o: b3.i, a4.o: b4.i}\n",
        "state.yaml:1:1: the rig has no cord of 20 cm left for a4.o to b4.i"
            + " | Is the stock in the rig's file right?");
    says(
        "cords: {a1.o: b1.i}\nlengths: {a1.o: 40 cm}\n",
        "state.yaml:1:1: the rig has no cord of 40 cm left for a1.o to b1.i"
            + " | Is the stock in the rig's file right?");
  }

  @Test
  void namesThatTheRigDoesNotHave() {
    says(
        "cords: {osc 1.sow: osc 2.fm}\n",
        "state.yaml:2:9: there is no jack \"osc 1.sow\" | Did you mean \"osc 1.saw\"?");
    says(
        "positions: {osc 1.tone: 3}\n",
        "state.yaml:2:13: there is no knob or switch \"osc 1.tone\""
            + " | Did you mean \"osc 1.tune\"?");
    says(
        "positions: {osc 1.octave: 9}\n",
        "state.yaml:2:27: there is no position \"9\" | Known here: 32, 16, 8, 4, 2.");
    says("lengths: {osc 1.saw: 30 cm}\n", "state.yaml:2:11: there is no cord from \"osc 1.saw\"");
  }

  @Test
  void aJackHoldsOnePlug() {
    says(
        "cords:\n  osc 1.saw: osc 2.fm\n  osc 1.sine: osc 2.fm\n",
        "state.yaml:4:15: \"osc 2.fm\" holds two plugs | The other stands in line 3.");
    says(
        "cords: {osc 1.saw: osc 1.saw}\n",
        "state.yaml:2:20: \"osc 1.saw\" holds two plugs | The other stands in line 2.");
  }

  @Test
  void aKnobStandsOnItsScale() {
    says(
        "positions: {osc 1.tune: 6}\n",
        "state.yaml:2:25: \"6\" lies off the scale | It runs from -5 to 5.");
    says(
        "positions: {osc 1.tune: up}\n",
        "state.yaml:2:25: \"up\" is not a figure | Write it like 4 or 6.5.");
  }

  @Test
  void aFileThatIsNoState() {
    Folder files = new Folder(folder);
    assertEquals(
        List.of(
            "set.yaml:1:1: \"set.yaml\" is a set, not a state"
                + " | Name a file that begins with a line state: NAME."),
        files.lines(RigStateReader.read(files.path("set.yaml"), rig).findings()));
    assertEquals(
        List.of("gone.yaml:1:1: there is no file \"gone.yaml\""),
        files.lines(RigStateReader.read(files.path("gone.yaml"), rig).findings()));
  }
}
