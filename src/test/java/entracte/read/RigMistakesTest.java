package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.rig.Kind;
import entracte.rig.Rig;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What may be wrong in a rig, and what else may stand in one. */
final class RigMistakesTest {
  @TempDir Path folder;

  private ReadSet read(String rig) {
    return Folder.ofRig(folder, rig).read();
  }

  private void says(String rig, String... expected) {
    assertEquals(List.of(expected), new Folder(folder).lines(read(rig).findings()));
  }

  private Rig rig(String rig) {
    ReadSet read = read(rig);
    assertEquals(List.of(), new Folder(folder).lines(read.findings()));
    return read.setList().orElseThrow().rig();
  }

  /** A rig of one module of the given kind; the kind stands in line 2 from column 12. */
  private static String kind(String kind) {
    return "rig: R\nkinds: {k: " + kind + "}\nrows: [[m: k]]\n";
  }

  private static String with(String line) {
    return kind("{out: o}") + line;
  }

  @Test
  void aRigNeedsKindsAndModules() {
    says(
        "rig: R\n",
        "rig.yaml:1:1: this rig has no kinds | Describe them under kinds.",
        "rig.yaml:1:1: this rig has no modules | List them under rows.");
    says(
        "kinds: {}\nrows: []\n",
        "rig.yaml:1:1: this rig has no name | Begin the file with a line rig: NAME.",
        "rig.yaml:1:1: this rig has no modules | List them under rows.");
  }

  @Test
  void aKindThatIsNotThere() {
    says(
        "rig: R\nkinds: {mixer: {out: o}}\nrows: [[m: mixr]]\n",
        "rig.yaml:3:12: there is no kind \"mixr\" | Did you mean \"mixer\"?");
    says(
        "rig: R\nkinds: {mixer: {out: o}}\nrows: [[m: ring]]\n",
        "rig.yaml:3:12: there is no kind \"ring\" | Known here: mixer.");
  }

  @Test
  void aModuleOfAMistypedKindIsKeptLestItsUsesBeCalledMistakes() {
    Rig rig =
        read("rig: R\nkinds: {mixer: {out: o}}\nrows: [[m: mixr]]\n").setList().orElseThrow().rig();
    assertEquals("mixer", rig.module("m").orElseThrow().kind().name());
  }

  @Test
  void aRowIsAListOfModules() {
    String advice = " | Begin its first module with two dashes and the others below the second.";
    says(
        "rig: R\nkinds: {k: {out: o}}\nrows:\n- m: k\n- n: k\n",
        "rig.yaml:4:3: a row is a list of modules, not names with values" + advice,
        "rig.yaml:5:3: a row is a list of modules, not names with values" + advice);
    says(
        "rig: R\nkinds: {k: {out: o}}\nrows: [m]\n",
        "rig.yaml:3:8: a row is a list of modules, not one value" + advice);
    says(
        "rig: R\nkinds: {k: {out: o}}\nrows: [[m]]\n",
        "rig.yaml:3:9: a row lists modules, not one value"
            + " | Write each on a line of its own: - name: kind.");
  }

  @Test
  void aScale() {
    says(
        kind("{knobs: {a: 0-10}}"),
        "rig.yaml:2:24: \"0-10\" is not a scale"
            + " | Write its lowest and highest figure like 0..10.");
    says(
        kind("{knobs: {a: 10..0}}"),
        "rig.yaml:2:24: \"10..0\" is a scale that does not rise | Write the lower figure first.");
    says(
        kind("{knobs: {a: 3..3}}"),
        "rig.yaml:2:24: \"3..3\" is a scale that does not rise | Write the lower figure first.");
  }

  @Test
  void cordsAreNoLongerThanTenMetres() {
    says(
        with("cords: {60 m: 8, 10 m: 1, 10.5 m: 1, 1234 cm: 2}"),
        "rig.yaml:4:9: \"60 m\" is long for a patch cord | Did you mean 60 cm?",
        "rig.yaml:4:27: \"10.5 m\" is long for a patch cord | Hardly any is longer than 10 m.",
        "rig.yaml:4:38: \"1234 cm\" is long for a patch cord | Hardly any is longer than 10 m.");
    assertFalse(read(with("cords: {60 m: 8}")).hasErrors());
  }

  @Test
  void positions() {
    says(
        kind("{switches: {a: [up, down, up]}}"),
        "rig.yaml:2:38: \"a\" has \"up\" twice | Give each of its positions a name of its own.");
    says(
        kind("{jumpers: {a: []}}"),
        "rig.yaml:2:23: \"a\" has no positions | List them: [one, another].");
    says(
        kind("{switches: {a: {up: down}}}"),
        "rig.yaml:2:27: \"a\" is a list, not names with values | Write [one, another].");
  }

  @Test
  void howManyEqualJacksTapsAndChannels() {
    says(
        kind("{in: [pitch x0]}"),
        "rig.yaml:2:18: a module cannot have 0 equal jacks | Their number lies from 2 to 99.");
    says(
        kind("{taps: 1}"),
        "rig.yaml:2:19: a module cannot have 1 taps | Their number lies from 2 to 99.");
    says(
        kind("{channels: {count: 999999999, in: a}}"),
        "rig.yaml:2:31: a module cannot have 999999999 channels | Their number lies from 1 to 99.");
    says(kind("{channels: {in: a}}"), "rig.yaml:2:13: \"channels\" has no count");
    says(
        kind("{channels: {count: 2, in: a x2}}"),
        "rig.yaml:2:38: a channel has each of its jacks once"
            + " | Give equal jacks of a channel names of their own.");
  }

  @Test
  void oneEqualJackIsAJackLikeAnother() {
    Kind kind = rig(kind("{in: [pitch x1, gate x 2, x2]}")).kinds().get(0);
    assertEquals(List.of("pitch", "x2"), kind.own().jacks().stream().map(j -> j.name()).toList());
    assertEquals(2, kind.equalJacks("gate").orElseThrow().count());
  }

  @Test
  void whatShutsAChannel() {
    says(
        kind("{channels: {count: 2, in: a, knobs: {l: 0..9}, closed: {l: down}}}"),
        "rig.yaml:2:71: \"down\" is not a figure | Write it like 4 or 6.5.");
  }

  @Test
  void widthsAndLeaves() {
    Rig rig = rig(kind("{width: 12, out: [o, p], leaves: [p]}") + "row height: 200 mm\n");
    assertEquals(12, rig.kinds().get(0).widthCm());
    assertEquals(6, rig.module("m").orElseThrow().centreCm());
    assertEquals(20, rig.rowHeightCm());
    assertEquals(Set.of("p"), rig.kinds().get(0).leaves());
    says(
        kind("{width: wide}"),
        "rig.yaml:2:20: \"wide\" is not a size | Write it in centimetres," + " like 6 cm.");
    says(
        with("row height: -3"),
        "rig.yaml:4:13: \"-3\" is not a size | Write it in centimetres, like 6 cm.");
  }

  @Test
  void cordsByNumber() {
    assertEquals(7, rig(with("cords: 7")).cords().total());
    assertEquals(false, rig(with("cords: 7")).cords().lengthMatters());
    assertEquals(true, rig(with("")).cords().isUnlimited());
    says(
        with("cords: many"),
        "rig.yaml:4:8: \"many\" is not a whole number | Write figures only, nine at most, like 5.");
    says(
        with("cords: -3"),
        "rig.yaml:4:8: \"-3\" is not a number of cords | It lies from 0 to 10000.");
  }

  @Test
  void cordsByLength() {
    assertEquals(
        "{5=1, 30=2, 90=3}",
        rig(with("cords: {30 cm: 2, 0.9 m: 3, 50mm: 1}")).cords().countByLengthCm().toString());
    says(
        with("cords: {30: 2}"), "rig.yaml:4:9: \"30\" is a length without its unit | Write 30 cm.");
    says(
        with("cords: {30 s: 2}"),
        "rig.yaml:4:9: \"30 s\" is a time, not a length | Write it like 30 cm or 0.9 m.");
    says(
        with("cords: {short: 2}"),
        "rig.yaml:4:9: \"short\" is not a length | Write it like 30 cm or 0.9 m.");
    says(
        with("cords: {30.5 cm: 2}"),
        "rig.yaml:4:9: \"30.5 cm\" is not the length of a cord"
            + " | Cords are measured in whole centimetres, from 1 up.");
    says(
        with("cords: {90 cm: 2, 0.9 m: 3}"),
        "rig.yaml:4:19: cords of 90 cm are counted twice | Write their number once.");
    says(
        with("cords: {}"), "rig.yaml:4:8: no cord is listed | Write their number, or {30 cm: 10}.");
  }

  @Test
  void gear() {
    says(
        with("gear: {piano: {prot: A}}"),
        "rig.yaml:4:16: \"prot\" is not known here | Did you mean \"port\"?",
        "rig.yaml:4:8: \"piano\" has no channel");
    says(with("gear: {piano: {channel: 1}}"), "rig.yaml:4:8: \"piano\" has no port");
    says(
        with("gear: {piano: {port: A, channel: one}}"),
        "rig.yaml:4:34: \"one\" is not a whole number | Write figures only, nine at most, like 5.");
    assertEquals(
        1, rig(with("gear: {piano: {port: A, channel: 16}}")).gear().get(0).programsFrom());
  }

  @Test
  void footSwitch() {
    assertEquals(
        "page down", rig(with("foot switch: {press: page down}")).footSwitch().get().press());
    says(with("foot switch: {port: A}"), "rig.yaml:4:1: \"foot switch\" has no press");
  }

  /** What uses a lost part would be called a mistake, so nothing of the rig is handed on. */
  @Test
  void aRigThatHasLostAPartIsNotHandedOn() {
    assertTrue(read(kind("{switches: {a: []}}")).setList().isEmpty());
    assertTrue(read(kind("{taps: four}")).setList().isEmpty());
    assertTrue(read(kind("{out: {a: b}}")).setList().isEmpty());
    assertTrue(read(kind("{out: [a], out: [b]}")).setList().isEmpty());
    assertTrue(read("rig: R\nkinds: {k: {out: o}}\nrows: [[m: ring]]\n").setList().isEmpty());
  }

  @Test
  void aRigIsHandedOnIfWhatWasMeantIsPlainOrDoesNotMatter() {
    assertTrue(read(kind("{knobs: {a: 0-10}}")).setList().isPresent());
    assertTrue(read(kind("{outt: o}")).setList().isPresent());
    assertTrue(read(kind("{taps: 0}")).setList().isPresent());
    assertTrue(read(kind("{out: o, colour: red}")).setList().isPresent());
    assertTrue(read(with("cords: {30: 10}")).setList().isPresent());
    assertTrue(read(with("cords: many")).setList().isPresent());
    assertTrue(read(with("gear: {piano: {port: 3}}")).setList().isPresent());
    assertTrue(read(with("foot switch: A")).setList().isPresent());
  }

  @Test
  void aMistypedNameIsTakenAsTheNearOne() {
    ReadSet read = read(kind("{outt: o}"));
    assertEquals(1, read.findings().size());
    assertEquals(1, read.setList().orElseThrow().rig().kinds().get(0).own().jacks().size());
  }
}
