package entracte.midi;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.midi.Trigger.Sense;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What foot switches send. MIDI 1.0 (96.1): switch controllers are off up to 63 and on from 64; a
 * note-on with velocity 0 is a note off.
 */
final class TriggerTest {
  private static Trigger trigger(String text) {
    return Trigger.parse(text).orElseThrow();
  }

  @Test
  void controllersAreDownFrom64() {
    Trigger pedal = trigger("cc 64");
    assertEquals(Sense.DOWN, pedal.sense(new Message.ControlChange(1, 64, 64)));
    assertEquals(Sense.UP, pedal.sense(new Message.ControlChange(1, 64, 63)));
    assertEquals(Sense.NOTHING, pedal.sense(new Message.ControlChange(1, 65, 127)));
  }

  @Test
  void aNoteWithoutVelocityComesUp() {
    Trigger pedal = trigger("note 60");
    assertEquals(Sense.DOWN, pedal.sense(new Message.NoteOn(5, 60, 1)));
    assertEquals(Sense.UP, pedal.sense(new Message.NoteOn(5, 60, 0)));
    assertEquals(Sense.UP, pedal.sense(new Message.NoteOff(5, 60, 64)));
  }

  @Test
  void programsAreCountedFromOneAndNeverComeUp() {
    assertEquals(Sense.TAP, trigger("program 5").sense(new Message.ProgramChange(1, 4)));
    assertEquals(Sense.NOTHING, trigger("program 5").sense(new Message.ProgramChange(1, 5)));
  }

  @Test
  void aNamedChannelShutsOutTheOthers() {
    Trigger pedal = trigger("cc 64 on channel 3");
    assertEquals(Sense.DOWN, pedal.sense(new Message.ControlChange(3, 64, 127)));
    assertEquals(Sense.NOTHING, pedal.sense(new Message.ControlChange(4, 64, 127)));
  }

  @Test
  void aNoteOnAnotherChannelIsNothing() {
    assertEquals(
        Sense.NOTHING, trigger("note 60 on channel 3").sense(new Message.NoteOn(4, 60, 9)));
  }

  @Test
  void noMessageIsAKeyOfAKeyboard() {
    assertEquals(Sense.NOTHING, trigger("page down").sense(new Message.NoteOn(1, 60, 9)));
  }

  @Test
  void whatIsWrittenIsReadBack() {
    for (String text :
        List.of("cc 0", "cc 127 on channel 16", "note 60", "program 128", "page down", "space")) {
      assertEquals(text, trigger(text).written());
    }
    assertEquals("cc 64", trigger("CC64").written());
  }

  @Test
  void whatMeansNothingIsEmpty() {
    for (String text :
        List.of(
            "",
            "cc",
            "cc 128",
            "note -1",
            "program 0",
            "program 129",
            "cc 1 on channel 17",
            "cc 1 on channel 0x",
            "page")) {
      assertEquals(Optional.empty(), Trigger.parse(text), text);
    }
  }

  @Test
  void aPressTellsWhatToWrite() {
    assertEquals("cc 80", Trigger.pressedBy(new Message.ControlChange(1, 80, 127)).get().written());
    assertEquals("program 1", Trigger.pressedBy(new Message.ProgramChange(1, 0)).get().written());
    assertEquals("note 60", Trigger.pressedBy(new Message.NoteOn(1, 60, 1)).get().written());
    assertEquals("cc 80", Trigger.pressedBy(new Message.ControlChange(1, 80, 64)).get().written());
    assertEquals(Optional.empty(), Trigger.pressedBy(new Message.ControlChange(1, 80, 63)));
    assertEquals(Optional.empty(), Trigger.pressedBy(new Message.ControlChange(1, 80, 0)));
    assertEquals(Optional.empty(), Trigger.pressedBy(new Message.NoteOn(1, 80, 0)));
  }
}
