package entracte.check;

import entracte.rig.Rig;
import entracte.setlist.GearCue;
import entracte.setlist.GearCue.Bank;
import entracte.setlist.GearCue.ControlChange;
import entracte.setlist.Song;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * What MIDI gear is sent. MIDI 1.0 has 16 channels and data bytes from 0 to 127, so 128 programs,
 * shown as 1 to 128 on most displays (a stage piano's implementation chart: "00H-7FH
 * (prog.1-prog.128)"); controllers 120 to 127 are channel mode messages (MIDI 1.0, quoted as 96.1).
 */
final class GearTest extends MistakesTest {
  private static Rig rig(int programsFrom) {
    return RigBuilder.rig().gear("piano", "Port A", 1, programsFrom).build();
  }

  private static Song song(GearCue... cues) {
    return new Song(
        "Song",
        PatchBuilder.patch("empty").build(),
        List.of(),
        OptionalDouble.empty(),
        List.of(cues),
        Song.Card.blank());
  }

  private static GearCue program(int program) {
    return new GearCue("piano", Optional.of(program), Optional.empty(), List.of());
  }

  private static GearCue controls(int... pairs) {
    List<ControlChange> changes = new java.util.ArrayList<>();
    for (int i = 0; i < pairs.length; i += 2) {
      changes.add(new ControlChange(pairs[i], pairs[i + 1]));
    }
    return new GearCue("piano", Optional.empty(), Optional.empty(), changes);
  }

  @Test
  void aDisplayThatCountsFromOneEndsAt128() {
    assertSaid(List.of(), rig(1), song(program(1)), other(program(128)));
    assertSaid(
        List.of(
            "error: \"piano\" has no program 0: its display counts from 1 to 128"
                + " / If it counts from 0, write \"programs from: 0\" in the rig."),
        rig(1),
        song(program(0)));
    assertSaid(
        List.of(
            "error: \"piano\" has no program 129: its display counts from 1 to 128"
                + " / Programs beyond these are reached by a bank."),
        rig(1),
        song(program(129)));
  }

  @Test
  void aDisplayThatCountsFromZeroEndsAt127() {
    assertSaid(List.of(), rig(0), song(program(0)), other(program(127)));
    assertSaid(
        List.of(
            "error: \"piano\" has no program 128: its display counts from 0 to 127"
                + " / If it counts from 1, write \"programs from: 1\" in the rig."),
        rig(0),
        song(program(128)));
    assertSaid(
        List.of(
            "error: \"piano\" has no program -1: its display counts from 0 to 127"
                + " / Count as the display of the instrument does."),
        rig(0),
        song(program(-1)));
  }

  /** Bank select holds until the next one (MIDI 1.0), so a song without one has the last one's. */
  @Test
  void aBankInSomeSongsOnlyIsDoubtful() {
    GearCue banked = new GearCue("piano", Optional.of(5), Optional.of(new Bank(0, 1)), List.of());
    assertSaid(
        List.of(
            "warning: \"piano\" has a bank in some songs, but none in \"Song\""
                + " / There it plays from the bank chosen last: write a bank beside each of its"
                + " programs."),
        rig(1),
        song(program(1)),
        other(banked));
    assertSaid(List.of(), rig(1), song(banked), other(banked));
    assertSaid(List.of(), rig(1), song(controls(7, 90)), other(banked));
    assertSaid(List.of(), rig(1), song(program(1)), other(program(2)));
  }

  private static Song other(GearCue cue) {
    return new Song(
        "Other",
        PatchBuilder.patch("empty").build(),
        List.of(),
        OptionalDouble.empty(),
        List.of(cue),
        Song.Card.blank());
  }

  @Test
  void displaysCountFromZeroOrOne() {
    assertSaid(
        List.of(
            "error: the programs of \"piano\" are counted from 2"
                + " / Write 0 or 1: the number its display gives to the first program."),
        rig(2),
        song(program(0)));
  }

  @Test
  void gearIsInTheRig() {
    GearCue cue = new GearCue("paino", Optional.of(1), Optional.empty(), List.of());
    assertSaid(
        List.of("error: \"paino\" is no gear of the rig / Did you mean \"piano\"?"),
        rig(1),
        song(cue));
    assertSaid(
        List.of("error: \"paino\" is no gear of the rig / Describe it in the rig, under \"gear\"."),
        RigBuilder.rig().build(),
        song(cue));
  }

  @Test
  void bothFiguresOfABankAreBytes() {
    assertSaid(
        List.of("error: there is no bank 1/128 / Both figures of a bank run from 0 to 127."),
        rig(1),
        song(new GearCue("piano", Optional.empty(), Optional.of(new Bank(1, 128)), List.of())));
  }

  @Test
  void controllersEndWhereOrdersToTheChannelBegin() {
    assertSaid(List.of(), rig(1), song(controls(7, 127, 119, 0)));
    assertSaid(
        List.of(
            "error: controller 120 is no sound setting but an order to the whole channel"
                + " / Use a controller from 0 to 119.",
            "error: controller 127 is no sound setting but an order to the whole channel"
                + " / Use a controller from 0 to 119.",
            "error: there is no controller 128 / Controllers are numbered from 0 to 119."),
        rig(1),
        song(controls(120, 0, 127, 0, 128, 0)));
  }

  @Test
  void aControllersValueIsAByte() {
    assertSaid(
        List.of("error: controller 7 cannot be set to 128 / Its values run from 0 to 127."),
        rig(1),
        song(controls(7, 128)));
  }

  @Test
  void aControllerIsSetOnce() {
    assertSaid(
        List.of("warning: controller 7 is set twice / Only one can be heard."),
        rig(1),
        song(controls(7, 100, 7, 90)));
  }

  @Test
  void banksAreNotWrittenAsControllers() {
    assertSaid(
        List.of(
            "warning: controller 32 is half of a bank"
                + " / Write \"bank: 1/2\" with both its figures; it then leaves before the"
                + " program."),
        rig(1),
        song(controls(32, 1)));
  }

  @Test
  void channelsAreNumberedFrom1To16() {
    assertSaid(
        List.of("error: \"drums\" is on channel 17 / MIDI channels are numbered from 1 to 16."),
        RigBuilder.rig().gear("piano", "A", 16, 1).gear("drums", "A", 17, 1).build(),
        song());
    assertSaid(
        List.of("error: \"drums\" is on channel 0 / MIDI channels are numbered from 1 to 16."),
        RigBuilder.rig().gear("drums", "A", 0, 1).build(),
        song());
  }

  @Test
  void gearOnOneChannelHearsEachOther() {
    assertSaid(
        List.of(
            "warning: \"piano\" and \"drums\" share channel 2 of one port"
                + " / Each of them hears what is meant for the other: put one on another"
                + " channel."),
        RigBuilder.rig()
            .gear("piano", "A", 2, 1)
            .gear("strings", "B", 2, 1)
            .gear("drums", "A", 2, 1)
            .build(),
        song());
  }

  @Test
  void gearStandsOnce() {
    assertSaid(
        List.of("error: the gear \"piano\" stands twice / Call one of them otherwise."),
        RigBuilder.rig().gear("piano", "A", 2, 1).gear("piano", "A", 2, 1).build(),
        song());
  }

  /** Controllers 0 to 31 have a low byte, controllers 32 to 63 are it (MIDI 1.0, table III). */
  @Test
  void fineValuesHave14Bits() {
    assertSaid(
        List.of(),
        rig(1),
        song(fine(GearCue.FineKind.CONTROLLER, 31, 16383)),
        other(fine(GearCue.FineKind.OPEN, 16383, 0)));
    assertSaid(
        List.of("error: controller 32 has no fine value / Controllers from 0 to 31 have one."),
        rig(1),
        song(fine(GearCue.FineKind.CONTROLLER, 32, 0)));
    assertSaid(
        List.of("error: there is no rpn 16384 / Parameters are numbered from 0 to 16383."),
        rig(1),
        song(fine(GearCue.FineKind.REGISTERED, 16384, 0)));
    assertSaid(
        List.of("error: nrpn 1 cannot be set to 16384 / Fine values run from 0 to 16383."),
        rig(1),
        song(fine(GearCue.FineKind.OPEN, 1, 16384)));
  }

  private static GearCue fine(GearCue.FineKind kind, int number, int value) {
    return new GearCue(
        "piano",
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(new GearCue.Fine(kind, number, value)));
  }
}
