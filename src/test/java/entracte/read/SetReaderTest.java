package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.finding.Place;
import entracte.rig.CordStock;
import entracte.rig.FootSwitch;
import entracte.rig.Gear;
import entracte.rig.Group;
import entracte.rig.Jumper;
import entracte.rig.Kind;
import entracte.rig.Knob;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Rig;
import entracte.rig.Scale;
import entracte.rig.Switch;
import entracte.setlist.End;
import entracte.setlist.GearCue;
import entracte.setlist.Patch;
import entracte.setlist.Role;
import entracte.setlist.SetList;
import entracte.setlist.Setting;
import entracte.setlist.Song;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example set of the file format, read whole. */
final class SetReaderTest {
  @TempDir Path folder;

  private SetList set() {
    ReadSet read = Folder.nightFerry(folder).read();
    assertEquals(List.of(), read.findings());
    return read.setList().orElseThrow();
  }

  @Test
  void theSetAndItsSong() {
    SetList set = set();
    assertEquals("Night Ferry", set.name());
    assertTrue(set.parking());
    assertEquals(1, set.songs().size());
    Song song = set.songs().get(0);
    assertEquals("Slack Water", song.name());
    assertEquals(List.of(new Setting("bright", "cutoff", "4")), song.settings());
    assertEquals(OptionalDouble.of(25), song.gapSeconds());
    assertEquals(
        List.of(
            new GearCue(
                "piano",
                Optional.of(5),
                Optional.empty(),
                List.of(new GearCue.ControlChange(7, 90, "volume")))),
        song.gear());
    assertEquals(
        new Song.Card(
            Optional.of("D minor"),
            Optional.of("92"),
            Optional.of("viola, four bars"),
            Optional.empty(),
            OptionalDouble.empty()),
        song.card());
  }

  @Test
  void thePatch() {
    Patch patch = set().songs().get(0).patch();
    assertEquals("two hands", patch.name());
    assertEquals(
        List.of(
            new Role("lead", List.of("oscillator")),
            new Role("bass", List.of("oscillator")),
            new Role("bass fifth", List.of("oscillator")),
            new Role("bright", List.of("filter")),
            new Role("blend", List.of("mixer"))),
        patch.roles());
    assertEquals(
        List.of(
            "keys.pitch 1 [lead.pitch]",
            "keys.pitch 2 [bass.pitch, bass fifth.pitch]",
            "bass.saw [blend.low.in]",
            "bass fifth.saw [blend.high.in]",
            "blend.out [bright.audio]"),
        patch.connections().stream().map(c -> c.source() + " " + c.sinks()).toList());
    assertEquals(
        List.of(
            new Setting("lead", "octave", "8"),
            new Setting("bright", "cutoff", "6.5 +-0.5"),
            new Setting("bright", "resonance", "3"),
            new Setting("bright", "slope", "other"),
            new Setting("bright", "other slope", "3-pole"),
            new Setting("blend.low", "level", "7"),
            new Setting("blend.high", "level", "5 +-1")),
        patch.settings());
  }

  @Test
  void theKinds() {
    Rig rig = set().rig();
    assertEquals("Harbour case", rig.name());
    Kind oscillator = rig.kind("oscillator").orElseThrow();
    assertEquals(
        List.of("fm IN", "sync IN", "saw OUT", "pulse OUT", "sine OUT"),
        oscillator.own().jacks().stream().map(j -> j.name() + " " + j.direction()).toList());
    assertEquals(2, oscillator.equalJacks("pitch").orElseThrow().count());
    assertEquals(
        List.of(new Knob("tune", new Scale(-5, 5)), new Knob("width", new Scale(0, 10))),
        oscillator.own().knobs());
    assertEquals(
        List.of(new Switch("octave", List.of("32", "16", "8", "4", "2"))),
        oscillator.own().switches());
    assertEquals(
        List.of(new Jumper("other slope", List.of("2-pole", "3-pole"))),
        rig.kind("filter").orElseThrow().jumpers());
    Group channels = rig.kind("mixer").orElseThrow().channels().orElseThrow();
    assertEquals(4, channels.count());
    assertEquals(Map.of("level", new Position.At(0)), channels.closed());
    assertEquals(4, rig.kind("multiple").orElseThrow().taps());
  }

  @Test
  void theModulesStandInTheirRows() {
    Rig rig = set().rig();
    assertEquals(
        "[[osc 1, osc 2, osc 3], [filter 1, filter 2, mix 1, mult 1]]", rig.rows().toString());
    Module mixer = rig.module("mix 1").orElseThrow();
    assertEquals(1, mixer.row());
    assertEquals(15, mixer.centreCm());
    assertEquals("mix 1.4.in", mixer.sockets().get(4).toString());
  }

  @Test
  void cordsGearAndFootSwitch() {
    Rig rig = set().rig();
    assertEquals(new CordStock(new TreeMap<>(Map.of(30, 10, 60, 8, 90, 4))), rig.cords());
    assertEquals(List.of(new Gear("piano", "Stage Piano", 1, 1)), rig.gear());
    assertEquals(Optional.of(new FootSwitch("Pedal", "cc 64", "back")), rig.footSwitch());
    assertEquals(25, rig.rowHeightCm());
  }

  @Test
  void everyPieceKeepsItsPlace() {
    ReadSet read = Folder.nightFerry(folder).read();
    SetList set = read.setList().orElseThrow();
    Patch patch = set.songs().get(0).patch();
    End sink = patch.connections().get(1).sinks().get(1);
    Place place = read.places().of(sink);
    assertEquals(10, place.line());
    assertEquals(30, place.column());
    assertEquals("  keys.pitch 2: [bass.pitch, bass fifth.pitch]", place.lineText());
    assertTrue(place.file().endsWith("/patches/two-hands.yaml"), place.file());
    assertEquals(12, read.places().of(patch.settings().get(1)).column());
    assertEquals(5, read.places().of(set.songs().get(0)).line());
    assertEquals(20, read.places().of(set.rig().module("osc 2").orElseThrow()).line());
  }
}
