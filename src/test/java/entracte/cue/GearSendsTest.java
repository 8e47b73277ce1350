package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.midi.Dispatch;
import entracte.rig.CordStock;
import entracte.rig.Gear;
import entracte.rig.Gear.Banks;
import entracte.rig.Gear.Manners;
import entracte.rig.Gear.SendAt;
import entracte.rig.Rig;
import entracte.setlist.GearCue;
import entracte.setlist.Patch;
import entracte.setlist.Song;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** From what a set says of its gear to the bytes. */
final class GearSendsTest {
  private static final Gear PIANO = new Gear("piano", "Stage Piano", 1, 1);
  private static final Gear BOX =
      new Gear("box", "", "/dev/midi1", 10, 0, new Manners(0.2, Banks.LOW, SendAt.SONG, false));

  private static Rig rig() {
    return new Rig(
        "Any",
        List.of(),
        List.of(),
        CordStock.unlimited(),
        25,
        List.of(PIANO, BOX),
        Optional.empty());
  }

  private static GearCue cue(String gear, int program) {
    return new GearCue(
        gear,
        Optional.of(program),
        Optional.of(new GearCue.Bank(1, 2)),
        List.of(new GearCue.ControlChange(7, 90)),
        List.of(new GearCue.Fine(GearCue.FineKind.REGISTERED, 0, 256)));
  }

  private static GearSends sends() {
    Song song =
        new Song(
            "Any",
            new Patch("any", List.of(), List.of(), List.of()),
            List.of(),
            OptionalDouble.empty(),
            List.of(cue("piano", 5), cue("box", 5)),
            Song.Card.blank(),
            Song.Running.plain(),
            List.of(
                new Song.Section(
                    "chorus",
                    List.of(
                        new GearCue(
                            "piano",
                            Optional.empty(),
                            Optional.empty(),
                            List.of(new GearCue.ControlChange(7, 100)))))));
    return GearSends.of(rig(), song);
  }

  private static List<String> lines(List<Dispatch> sends) {
    return sends.stream().map(d -> d.gear() + " " + d.outlet().name() + " " + d.hex()).toList();
  }

  /** Program 5 of a display that counts from 1 is 4 on the wire. */
  @Test
  void gearIsSetAsItsOwnDisplayCountsAndWhenItWants() {
    assertEquals(
        List.of(
            "piano Stage Piano B0 40 00 B0 42 00 B0 7B 00 B0 00 01 B0 20 02 C0 04 wait 100 ms"
                + " B0 07 5A B0 65 00 B0 64 00 B0 06 02 B0 26 00 B0 65 7F B0 64 7F"),
        lines(sends().changeover()));
    assertEquals(
        List.of(
            "box /dev/midi1 B9 40 00 B9 42 00 B9 7B 00 B9 20 02 C9 05 wait 200 ms"
                + " B9 07 5A B9 65 00 B9 64 00 B9 06 02 B9 26 00 B9 65 7F B9 64 7F"),
        lines(sends().song()));
  }

  @Test
  void aSectionSendsItsOwn() {
    assertEquals("chorus", sends().sections().get(0).name());
    assertEquals(List.of("piano Stage Piano B0 07 64"), lines(sends().sections().get(0).sends()));
  }

  @Test
  void quietReachesEveryPieceOfGear() {
    assertEquals(
        List.of(
            "piano Stage Piano B0 40 00 B0 42 00 B0 7B 00 B0 78 00",
            "box /dev/midi1 B9 40 00 B9 42 00 B9 7B 00 B9 78 00"),
        lines(GearSends.quiet(rig())));
  }
}
