package entracte.midi;

import java.util.Optional;

/** Data bytes of 7 bits, and pairs of them. */
final class Bytes {
  private static final int HIGHEST = 127;
  private static final int CHANNELS = 16;
  private static final int BITS = 7;

  private Bytes() {}

  static void requireChannel(int channel) {
    if (channel < 1 || channel > CHANNELS) {
      throw new IllegalArgumentException("channels run from 1 to 16: " + channel);
    }
  }

  static void requireData(int... data) {
    for (int each : data) {
      if (each < 0 || each > HIGHEST) {
        throw new IllegalArgumentException("data bytes run from 0 to 127: " + each);
      }
    }
  }

  static void requireFine(int value) {
    if (value < 0 || value >= Message.FINE_VALUES) {
      throw new IllegalArgumentException("14 bits run from 0 to 16383: " + value);
    }
  }

  static int high(int fine) {
    return fine >> BITS;
  }

  static int low(int fine) {
    return fine & HIGHEST;
  }

  static byte[] of(int status, int channel, int... data) {
    byte[] bytes = new byte[1 + data.length];
    bytes[0] = (byte) (status | (channel - 1));
    for (int i = 0; i < data.length; i++) {
      bytes[i + 1] = (byte) data[i];
    }
    return bytes;
  }

  static Optional<Message> read(byte[] bytes) {
    if (bytes.length == 0 || !isWhole(bytes)) {
      return Optional.empty();
    }
    int kind = bytes[0] & 0xF0;
    int channel = (bytes[0] & 0x0F) + 1;
    int one = bytes[1];
    if (bytes.length == 2) {
      return Optional.of(
          kind == Message.PROGRAM_CHANGE
              ? new Message.ProgramChange(channel, one)
              : new Message.ChannelPressure(channel, one));
    }
    int two = bytes[2];
    return Optional.of(
        switch (kind) {
          case Message.NOTE_OFF -> new Message.NoteOff(channel, one, two);
          case Message.NOTE_ON -> new Message.NoteOn(channel, one, two);
          case Message.POLY_PRESSURE -> new Message.PolyPressure(channel, one, two);
          case Message.CONTROL_CHANGE -> new Message.ControlChange(channel, one, two);
          default -> new Message.PitchBend(channel, (two << BITS) | one);
        });
  }

  private static boolean isWhole(byte[] bytes) {
    int status = bytes[0] & 0xFF;
    if (status < Message.NOTE_OFF || status > 0xEF) {
      return false;
    }
    int kind = status & 0xF0;
    boolean one = kind == Message.PROGRAM_CHANGE || kind == Message.CHANNEL_PRESSURE;
    if (bytes.length != (one ? 2 : 3)) {
      return false;
    }
    for (int i = 1; i < bytes.length; i++) {
      if (bytes[i] < 0) {
        return false;
      }
    }
    return true;
  }
}
