package entracte.midi;

import entracte.midi.Message.ControlChange;
import entracte.midi.Message.NoteOff;
import entracte.midi.Message.ProgramChange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What one piece of gear is set to for a song. In this order: held notes and pedals are let go (a
 * program change does not end them), bank, program, the settling time, and then whatever a load of
 * the program would have overwritten.
 *
 * @param channel 1 to 16
 * @param program on the wire, 0 to 127; empty if the sound stays
 * @param settleMillis how long the gear takes to load a program
 * @param after controllers and parameters
 */
public record SongProgram(
    int channel, Optional<Bank> bank, OptionalInt program, int settleMillis, List<Setting> after) {

  private static final int NO_PARAMETER = 127;

  public SongProgram {
    Bytes.requireChannel(channel);
    after = List.copyOf(after);
    program.ifPresent(Bytes::requireData);
    if (settleMillis < 0) {
      throw new IllegalArgumentException("time runs forward: " + settleMillis);
    }
  }

  /** Bank select: the high byte is controller 0, the low byte controller 32. */
  public record Bank(int high, int low, Use use) {
    /** Which bytes the gear wants; some take one for the other if they get both. */
    public enum Use {
      BOTH,
      HIGH,
      LOW
    }

    public Bank {
      Bytes.requireData(high, low);
    }
  }

  /** One thing that is set after the program. */
  public sealed interface Setting {
    List<Message> on(int channel);
  }

  /** A controller with its 7 bits. */
  public record Coarse(int controller, int value) implements Setting {
    public Coarse {
      Bytes.requireData(controller, value);
    }

    @Override
    public List<Message> on(int channel) {
      return List.of(new ControlChange(channel, controller, value));
    }
  }

  /** A controller, 0 to 31, with 14 bits. The high byte leaves first: it sets the low one to 0. */
  public record Fine(int controller, int value) implements Setting {
    public Fine {
      Bytes.requireFine(value);
      if (controller < 0 || controller >= Controllers.LOW_BYTE) {
        throw new IllegalArgumentException("controller " + controller + " has 7 bits");
      }
    }

    @Override
    public List<Message> on(int channel) {
      return List.of(
          new ControlChange(channel, controller, Bytes.high(value)),
          new ControlChange(channel, controller + Controllers.LOW_BYTE, Bytes.low(value)));
    }
  }

  /**
   * A parameter, registered (such as 0, the range of the bend wheel) or not, with 14 bits. It is
   * let go of afterwards, so that a stray data entry changes nothing.
   */
  public record Parameter(boolean registered, int number, int value) implements Setting {
    public Parameter {
      Bytes.requireFine(number);
      Bytes.requireFine(value);
    }

    @Override
    public List<Message> on(int channel) {
      return List.of(
          choose(channel, true, Bytes.high(number)),
          choose(channel, false, Bytes.low(number)),
          new ControlChange(channel, Controllers.DATA_HIGH, Bytes.high(value)),
          new ControlChange(channel, Controllers.DATA_LOW, Bytes.low(value)),
          choose(channel, true, NO_PARAMETER),
          choose(channel, false, NO_PARAMETER));
    }

    private Message choose(int channel, boolean high, int value) {
      int controller =
          registered
              ? (high
                  ? Controllers.REGISTERED_PARAMETER_HIGH
                  : Controllers.REGISTERED_PARAMETER_LOW)
              : (high ? Controllers.OPEN_PARAMETER_HIGH : Controllers.OPEN_PARAMETER_LOW);
      return new ControlChange(channel, controller, value);
    }
  }

  /** The messages with their waits. */
  public List<Dispatch.Timed> messages() {
    List<Dispatch.Timed> timed = new ArrayList<>();
    if (program.isPresent()) {
      release(channel).forEach(message -> timed.add(Dispatch.Timed.now(message)));
    }
    timed.addAll(inSong());
    return timed;
  }

  /** The same in the midst of a song: a chord that is held is the player's, and stays. */
  public List<Dispatch.Timed> inSong() {
    List<Dispatch.Timed> timed = new ArrayList<>();
    boolean loads = program.isPresent();
    bank.ifPresent(b -> select(b).forEach(message -> timed.add(Dispatch.Timed.now(message))));
    program.ifPresent(p -> timed.add(Dispatch.Timed.now(new ProgramChange(channel, p))));
    int wait = loads ? settleMillis : 0;
    for (Setting setting : after) {
      for (Message message : setting.on(channel)) {
        timed.add(new Dispatch.Timed(wait, message));
        wait = 0;
      }
    }
    return timed;
  }

  private List<Message> select(Bank chosen) {
    List<Message> messages = new ArrayList<>();
    if (chosen.use() != Bank.Use.LOW) {
      messages.add(new ControlChange(channel, Controllers.BANK_HIGH, chosen.high()));
    }
    if (chosen.use() != Bank.Use.HIGH) {
      messages.add(new ControlChange(channel, Controllers.BANK_LOW, chosen.low()));
    }
    return messages;
  }

  /** Lets go of held pedals and notes. */
  public static List<Message> release(int channel) {
    return List.of(
        new ControlChange(channel, Controllers.SUSTAIN, 0),
        new ControlChange(channel, Controllers.SOSTENUTO, 0),
        new ControlChange(channel, Controllers.ALL_NOTES_OFF, 0));
  }

  /**
   * Silences a channel: pedals and notes let go, all sound off, and, for gear that knows neither
   * order, every note off by itself (384 bytes, 123 ms on a wire of 31,250 baud).
   */
  public static List<Message> quiet(int channel, boolean oneByOne) {
    List<Message> messages = new ArrayList<>(release(channel));
    messages.add(new ControlChange(channel, Controllers.ALL_SOUND_OFF, 0));
    for (int note = 0; oneByOne && note <= 127; note++) {
      messages.add(new NoteOff(channel, note, 64));
    }
    return messages;
  }
}
