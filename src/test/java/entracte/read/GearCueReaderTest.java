package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.setlist.GearCue;
import entracte.setlist.GearCue.Bank;
import entracte.setlist.GearCue.ControlChange;
import entracte.setlist.GearCue.Fine;
import entracte.setlist.GearCue.FineKind;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a song sends to its MIDI gear. */
final class GearCueReaderTest {
  @TempDir Path folder;

  private ReadSet read(String piano) {
    String gear = "gear: {piano: {program: 5, volume: 90}}";
    String set = Folder.SET.replace(gear, "gear: {piano: " + piano + "}");
    return Folder.nightFerry(folder).with("set.yaml", set).read();
  }

  private GearCue cue(String piano) {
    ReadSet read = read(piano);
    assertEquals(List.of(), read.findings());
    return read.setList().orElseThrow().songs().get(0).gear().get(0);
  }

  private void says(String piano, String... expected) {
    assertEquals(List.of(expected), new Folder(folder).lines(read(piano).findings()));
  }

  @Test
  void programAndBank() {
    assertEquals(
        new GearCue("piano", Optional.of(10), Optional.of(new Bank(1, 2)), List.of()),
        cue("{program: 010, bank: 1/2}"));
    assertEquals(Optional.of(new Bank(1, 2)), cue("{bank: {high: 1, low: 2}}").bank());
  }

  @Test
  void numbersAreTakenAsWrittenWhateverTheirRange() {
    assertEquals(Optional.of(999), cue("{program: 999}").program());
    assertEquals(Optional.of(-1), cue("{program: -1}").program());
    assertEquals(Optional.of(new Bank(300, 2)), cue("{bank: 300/2}").bank());
    assertEquals(List.of(new ControlChange(200, 128)), cue("{cc 200: 128}").controls());
  }

  /** Numbers from the controller table of MIDI 1.0 (MIDI Manufacturers Association). */
  @Test
  void controllersByNameAndByNumber() {
    assertEquals(
        List.of(
            new ControlChange(1, 10, "modulation"),
            new ControlChange(7, 20, "volume"),
            new ControlChange(10, 30, "pan"),
            new ControlChange(11, 40, "expression"),
            new ControlChange(64, 127, "sustain"),
            new ControlChange(74, 50, "brightness"),
            new ControlChange(74, 60),
            new ControlChange(91, 70, "reverb"),
            new ControlChange(93, 80, "chorus")),
        cue("{modulation: 10, volume: 20, pan: 30, expression: 40, sustain: 127,"
                + " brightness: 50, cc 74: 60, reverb: 70, chorus: 80}")
            .controls());
  }

  @Test
  void whatIsNoNumber() {
    says(
        "{program: five}",
        "set.yaml:9:29: \"five\" is not a whole number"
            + " | Write figures only, nine at most, like 5.");
    says(
        "{volume: 0.5}",
        "set.yaml:9:28: \"0.5\" is not a whole number"
            + " | Write figures only, nine at most, like 5.");
    says(
        "{program: 12345678901}",
        "set.yaml:9:29: \"12345678901\" is not a whole number"
            + " | Write figures only, nine at most, like 5.");
  }

  @Test
  void whatIsNoBank() {
    says("{bank: 3}", "set.yaml:9:26: \"3\" is not a bank | Write its high and its low byte: 0/2.");
    says("{bank: {high: 3}}", "set.yaml:9:20: \"bank\" has no low");
  }

  @Test
  void whatIsNoController() {
    says(
        "{volme: 3}", "set.yaml:9:20: there is no controller \"volme\" | Did you mean \"volume\"?");
    says(
        "{warmth: 3}",
        "set.yaml:9:20: there is no controller \"warmth\""
            + " | Any controller can be written by its number: cc 74.");
  }

  @Test
  void gearIsATable() {
    says(
        "5",
        "set.yaml:9:19: \"piano\" is names with values, not one value"
            + " | Write {name: value}, or indented lines of name: value.");
  }

  @Test
  void fineValuesAndParameters() {
    assertEquals(
        List.of(
            new Fine(FineKind.CONTROLLER, 7, 10000, "fine volume"),
            new Fine(FineKind.CONTROLLER, 16, 1),
            new Fine(FineKind.REGISTERED, 0, 256),
            new Fine(FineKind.OPEN, 130, 5)),
        cue("{fine volume: 10000, fine cc 16: 1, rpn 0: 256, nrpn 130: 5}").fine());
  }
}
