package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.rig.FootSwitch;
import entracte.rig.Gear;
import entracte.rig.Gear.Banks;
import entracte.rig.Gear.Manners;
import entracte.rig.Gear.SendAt;
import entracte.rig.Rig;
import entracte.setlist.GearCue;
import entracte.setlist.Song;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The MIDI gear of a rig, its foot switch, and what a set says of the night. */
final class GearReaderTest {
  private static final String PIANO = "piano: {port: Stage Piano, channel: 1, programs from: 1}";
  private static final String PEDAL = "{port: Pedal, press: cc 64, hold: back}";

  @TempDir Path folder;

  private Folder rigWith(String old, String now) {
    return Folder.nightFerry(folder).with("harbour-case.yaml", Folder.RIG.replace(old, now));
  }

  private Rig rig(String old, String now) {
    ReadSet read = rigWith(old, now).read();
    assertEquals(List.of(), read.findings());
    return read.setList().orElseThrow().rig();
  }

  @Test
  void gearHasManners() {
    Rig rig =
        rig(
            PIANO,
            "piano: {device: /dev/midi1, channel: 2, settle: 0.5 s, banks: high, send: song,"
                + " notes off: one by one}");
    assertEquals(
        List.of(
            new Gear(
                "piano", "", "/dev/midi1", 2, 1, new Manners(0.5, Banks.HIGH, SendAt.SONG, true))),
        rig.gear());
  }

  @Test
  void gearHangsOnOnePlace() {
    assertEquals(
        List.of(
            "harbour-case.yaml:28:17: gear hangs on a port or on a device, not on both"
                + " | Leave out the port, or the device \"/dev/midi1\"."),
        rigWith(PIANO, "piano: {port: A, device: /dev/midi1, channel: 2}").findings());
  }

  @Test
  void aFootSwitchMayLatchAndHaveASecondSwitch() {
    assertEquals(
        Optional.of(new FootSwitch("Pedal", "note 60", "", "note 62", true, 0.4, 1.5)),
        rig(
                PEDAL,
                "{port: Pedal, press: note 60, back: note 62, latching: yes, lock out: 0.4 s,"
                    + " deaf after sending: 1.5 s}")
            .footSwitch());
  }

  @Test
  void whatNoSwitchSendsIsToldWithAdvice() {
    assertEquals(
        List.of(
            "harbour-case.yaml:29:35: \"cc 200\" is nothing that a foot switch sends"
                + " | Write it like cc 64, note 60 (both 0 to 127), program 5 (1 to 128)"
                + " or page down.",
            "harbour-case.yaml:29:49: \"bak\" is not known here | Did you mean \"back\"?"),
        rigWith(PEDAL, "{port: Pedal, press: cc 200, hold: bak}").findings());
  }

  @Test
  void aSongMayHaveSectionsAndASetAFallback() {
    String set =
        Folder.SET
            .replace("songs:", "fallback: Slack Water\nsongs:")
            .replace(
                "    key: D minor",
                "    key: D minor\n    sections:\n"
                    + "      - section: chorus\n        gear: {piano: {program: 7}}");
    ReadSet read = Folder.nightFerry(folder).with("set.yaml", set).read();
    assertEquals(List.of(), read.findings());
    Song song = read.setList().orElseThrow().songs().get(0);
    GearCue seven = new GearCue("piano", Optional.of(7), Optional.empty(), List.of());
    assertEquals(List.of(new Song.Section("chorus", List.of(seven))), song.sections());
    assertEquals(Optional.of("Slack Water"), read.setList().orElseThrow().fallback());
  }
}
