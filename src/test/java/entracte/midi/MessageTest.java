package entracte.midi;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Bytes of single messages. Status bytes are those of the MIDI 1.0 Detailed Specification (MMA,
 * 96.1), table I: 8n note off, 9n note on, An poly pressure, Bn control change, Cn program change,
 * Dn channel pressure, En pitch bend with the low byte first and its centre at 00 40.
 */
final class MessageTest {
  private static void bytes(String hex, Message message) {
    byte[] expected = HexFormat.ofDelimiter(" ").parseHex(hex);
    assertArrayEquals(expected, message.bytes());
    assertEquals(Optional.of(message), Message.read(expected));
  }

  @Test
  void everyChannelMessageHasItsStatusByte() {
    bytes("80 3C 40", new Message.NoteOff(1, 60, 64));
    bytes("9F 3C 7F", new Message.NoteOn(16, 60, 127));
    bytes("A1 3C 05", new Message.PolyPressure(2, 60, 5));
    bytes("B0 40 7F", new Message.ControlChange(1, 64, 127));
    bytes("C9 00", new Message.ProgramChange(10, 0));
    bytes("D2 11", new Message.ChannelPressure(3, 17));
    bytes("E0 00 40", new Message.PitchBend(1, 8192));
    bytes("E0 7F 7F", new Message.PitchBend(1, 16383));
    bytes("EF 00 40", new Message.PitchBend(16, 8192));
  }

  /** The program changes of the example file in Standard MIDI Files 1.0 (MMA RP-001). */
  @Test
  void theProgramChangesOfThePublishedExampleFile() {
    bytes("C0 05", new Message.ProgramChange(1, 5));
    bytes("C1 2E", new Message.ProgramChange(2, 46));
    bytes("C2 46", new Message.ProgramChange(3, 70));
  }

  @Test
  void whatDoesNotFitIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Message.ProgramChange(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Message.ProgramChange(17, 1));
    assertThrows(IllegalArgumentException.class, () -> new Message.ProgramChange(1, 128));
    assertThrows(IllegalArgumentException.class, () -> new Message.ControlChange(1, 7, -1));
    assertThrows(IllegalArgumentException.class, () -> new Message.PitchBend(1, 16384));
  }

  @Test
  void whatIsNoChannelMessageIsNotRead() {
    for (String hex : List.of("F8", "F0 7D F7", "40 40", "C0", "C0 80", "B0 40", "B0 40 80", "")) {
      byte[] bytes = hex.isEmpty() ? new byte[0] : HexFormat.ofDelimiter(" ").parseHex(hex);
      assertEquals(Optional.empty(), Message.read(bytes), hex);
    }
  }
}
