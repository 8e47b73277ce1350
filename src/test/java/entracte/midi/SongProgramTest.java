package entracte.midi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import entracte.midi.SongProgram.Bank;
import entracte.midi.SongProgram.Coarse;
import entracte.midi.SongProgram.Fine;
import entracte.midi.SongProgram.Parameter;
import entracte.midi.SongProgram.Setting;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * Whole song programs as bytes. Sources: bank select is controller 0, controller 32, then the
 * program change (MIDI 1.0, 96.1; bank 1/2 and the third program on channel 1 is B0 00 01 B0 20 02
 * C0 02); a 14-bit value travels as 128 x high + low, high first (controller 7 at 10000 is 78 and
 * 16); registered parameter 0 is the range of the bend wheel, chosen by controllers 101 and 100 and
 * let go of by 127 in both; controllers 64, 66, 120, 123 from table III.
 */
final class SongProgramTest {
  private static String hex(SongProgram program) {
    return new Dispatch("piano", new Outlet.Port("Stage Piano"), program.messages()).hex();
  }

  private static SongProgram program(Optional<Bank> bank, int wire, Setting... after) {
    return new SongProgram(
        1, bank, wire < 0 ? OptionalInt.empty() : OptionalInt.of(wire), 100, List.of(after));
  }

  private static final String RELEASE = "B0 40 00 B0 42 00 B0 7B 00 ";

  @Test
  void letsGoThenBankThenProgramThenWaitsThenControllers() {
    assertEquals(
        RELEASE + "B0 00 01 B0 20 02 C0 02 wait 100 ms B0 07 5A B0 0A 40",
        hex(
            program(
                Optional.of(new Bank(1, 2, Bank.Use.BOTH)),
                2,
                new Coarse(7, 90),
                new Coarse(10, 64))));
  }

  @Test
  void gearMayWantOneByteOfTheBankOnly() {
    assertEquals(
        RELEASE + "B0 00 01 C0 02", hex(program(Optional.of(new Bank(1, 2, Bank.Use.HIGH)), 2)));
    assertEquals(
        RELEASE + "B0 20 02 C0 02", hex(program(Optional.of(new Bank(1, 2, Bank.Use.LOW)), 2)));
  }

  @Test
  void withoutAProgramNothingIsLetGoAndNothingWaits() {
    assertEquals("B0 07 00", hex(program(Optional.empty(), -1, new Coarse(7, 0))));
  }

  @Test
  void inTheMidstOfASongWhatIsHeldStaysHeld() {
    SongProgram program = program(Optional.of(new Bank(1, 2, Bank.Use.BOTH)), 2, new Coarse(7, 90));
    Outlet port = new Outlet.Port("Stage Piano");
    assertEquals(
        "B0 00 01 B0 20 02 C0 02 wait 100 ms B0 07 5A",
        new Dispatch("piano", port, program.inSong()).hex());
  }

  @Test
  void fineValuesSendTheHighByteFirst() {
    assertEquals("B0 07 4E B0 27 10", hex(program(Optional.empty(), -1, new Fine(7, 10000))));
  }

  @Test
  void aRegisteredParameterIsChosenSetAndLetGo() {
    assertEquals(
        "B0 65 00 B0 64 00 B0 06 02 B0 26 00 B0 65 7F B0 64 7F",
        hex(program(Optional.empty(), -1, new Parameter(true, 0, 2 * 128))));
  }

  @Test
  void aMakersOwnParameterHasItsOwnControllers() {
    assertEquals(
        "B0 63 01 B0 62 02 B0 06 00 B0 26 05 B0 63 7F B0 62 7F",
        hex(program(Optional.empty(), -1, new Parameter(false, 130, 5))));
  }

  @Test
  void theOtherChannelsDifferInTheLowHalfOfTheStatusByte() {
    SongProgram tenth =
        new SongProgram(10, Optional.empty(), OptionalInt.of(0), 0, List.of(new Coarse(7, 1)));
    assertEquals("B9 40 00 B9 42 00 B9 7B 00 C9 00 B9 07 01", hex(tenth));
  }

  @Test
  void quietLetsGoAndCutsEverySound() {
    Outlet port = new Outlet.Port("Stage Piano");
    assertEquals(
        "B1 40 00 B1 42 00 B1 7B 00 B1 78 00",
        Dispatch.atOnce("piano", port, SongProgram.quiet(2, false)).hex());
    List<Message> each = SongProgram.quiet(2, true);
    assertEquals(4 + 128, each.size());
    assertEquals(new Message.NoteOff(2, 127, 64), each.get(each.size() - 1));
  }

  @Test
  void whatDoesNotFitIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Fine(32, 0));
    assertThrows(IllegalArgumentException.class, () -> new Fine(7, 16384));
    assertThrows(IllegalArgumentException.class, () -> new Bank(128, 0, Bank.Use.BOTH));
    assertThrows(IllegalArgumentException.class, () -> program(Optional.empty(), 128));
  }
}
