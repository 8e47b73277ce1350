package entracte.midi;

import java.util.Optional;

/**
 * A channel message. Channels run from 1 to 16, data bytes from 0 to 127, as checked when one is
 * made.
 */
public sealed interface Message {
  /** One past the greatest 14-bit value. */
  int FINE_VALUES = 1 << 14;

  int NOTE_OFF = 0x80;
  int NOTE_ON = 0x90;
  int POLY_PRESSURE = 0xA0;
  int CONTROL_CHANGE = 0xB0;
  int PROGRAM_CHANGE = 0xC0;
  int CHANNEL_PRESSURE = 0xD0;
  int PITCH_BEND = 0xE0;

  /** The bytes on the wire, always with their status byte; a new array each time. */
  byte[] bytes();

  /** From 1 to 16. */
  int channel();

  /** A key comes up. */
  record NoteOff(int channel, int note, int velocity) implements Message {
    public NoteOff {
      Bytes.requireChannel(channel);
      Bytes.requireData(note, velocity);
    }

    @Override
    public byte[] bytes() {
      return Bytes.of(NOTE_OFF, channel, note, velocity);
    }
  }

  /** A key goes down. With velocity 0 it means the same as {@link NoteOff}. */
  record NoteOn(int channel, int note, int velocity) implements Message {
    public NoteOn {
      Bytes.requireChannel(channel);
      Bytes.requireData(note, velocity);
    }

    @Override
    public byte[] bytes() {
      return Bytes.of(NOTE_ON, channel, note, velocity);
    }
  }

  /** A held key is pressed harder. */
  record PolyPressure(int channel, int note, int pressure) implements Message {
    public PolyPressure {
      Bytes.requireChannel(channel);
      Bytes.requireData(note, pressure);
    }

    @Override
    public byte[] bytes() {
      return Bytes.of(POLY_PRESSURE, channel, note, pressure);
    }
  }

  /** A controller moves; from 120 up it is an order to the whole channel. */
  record ControlChange(int channel, int controller, int value) implements Message {
    public ControlChange {
      Bytes.requireChannel(channel);
      Bytes.requireData(controller, value);
    }

    @Override
    public byte[] bytes() {
      return Bytes.of(CONTROL_CHANGE, channel, controller, value);
    }
  }

  /** A sound is chosen; {@code program} counts from 0, whatever displays say. */
  record ProgramChange(int channel, int program) implements Message {
    public ProgramChange {
      Bytes.requireChannel(channel);
      Bytes.requireData(program);
    }

    @Override
    public byte[] bytes() {
      return Bytes.of(PROGRAM_CHANGE, channel, program);
    }
  }

  /** All held keys are pressed harder. */
  record ChannelPressure(int channel, int pressure) implements Message {
    public ChannelPressure {
      Bytes.requireChannel(channel);
      Bytes.requireData(pressure);
    }

    @Override
    public byte[] bytes() {
      return Bytes.of(CHANNEL_PRESSURE, channel, pressure);
    }
  }

  /** The bend wheel, 0 to 16383 with its rest at 8192; the low byte travels first. */
  record PitchBend(int channel, int value) implements Message {
    public PitchBend {
      Bytes.requireChannel(channel);
      Bytes.requireFine(value);
    }

    @Override
    public byte[] bytes() {
      return Bytes.of(PITCH_BEND, channel, Bytes.low(value), Bytes.high(value));
    }
  }

  /** Reads a whole message; empty for system messages and for what is none. */
  static Optional<Message> read(byte[] bytes) {
    return Bytes.read(bytes);
  }
}
