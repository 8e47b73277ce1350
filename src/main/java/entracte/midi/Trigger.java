package entracte.midi;

import java.util.Optional;

/**
 * What a foot switch sends: {@code cc 64}, {@code note 60}, {@code program 5} (counted from 1, as
 * on most pedals), with {@code on channel 3} behind it if other channels do not count. A switch
 * that acts as a keyboard is {@code page down} or another key.
 */
public sealed interface Trigger {
  /** Values from here on mean "down", as MIDI 1.0 has it for switch pedals. */
  int DOWN_FROM = 64;

  /** What a message means to the switch. */
  enum Sense {
    DOWN,
    UP,
    /** Down, with no sign of coming up to follow. */
    TAP,
    NOTHING
  }

  /** What {@code message} says of this switch. */
  Sense sense(Message message);

  /** As it is written in a rig. */
  String written();

  /** A controller. */
  record Controller(int number, int channel) implements Trigger {
    public Controller {
      Bytes.requireData(number);
    }

    @Override
    public Sense sense(Message message) {
      if (message instanceof Message.ControlChange change
          && change.controller() == number
          && hears(channel, message)) {
        return change.value() >= DOWN_FROM ? Sense.DOWN : Sense.UP;
      }
      return Sense.NOTHING;
    }

    @Override
    public String written() {
      return "cc " + number + tail(channel);
    }
  }

  /** A note; one with velocity 0 comes up. */
  record Note(int number, int channel) implements Trigger {
    public Note {
      Bytes.requireData(number);
    }

    @Override
    public Sense sense(Message message) {
      if (!hears(channel, message)) {
        return Sense.NOTHING;
      }
      if (message instanceof Message.NoteOn on && on.note() == number) {
        return on.velocity() > 0 ? Sense.DOWN : Sense.UP;
      }
      return message instanceof Message.NoteOff off && off.note() == number
          ? Sense.UP
          : Sense.NOTHING;
    }

    @Override
    public String written() {
      return "note " + number + tail(channel);
    }
  }

  /** A program change, counted from 1. */
  record Program(int number, int channel) implements Trigger {
    public Program {
      Bytes.requireData(number - 1);
    }

    @Override
    public Sense sense(Message message) {
      return message instanceof Message.ProgramChange change
              && change.program() == number - 1
              && hears(channel, message)
          ? Sense.TAP
          : Sense.NOTHING;
    }

    @Override
    public String written() {
      return "program " + number + tail(channel);
    }
  }

  /** A key of a keyboard-type pedal, which the terminal hears. */
  record Key(String name) implements Trigger {
    @Override
    public Sense sense(Message message) {
      return Sense.NOTHING;
    }

    @Override
    public String written() {
      return name;
    }
  }

  private static boolean hears(int channel, Message message) {
    return channel == 0 || message.channel() == channel;
  }

  private static String tail(int channel) {
    return channel == 0 ? "" : " on channel " + channel;
  }

  /** Reads what a rig says; empty if it means nothing. */
  static Optional<Trigger> parse(String text) {
    return TriggerText.parse(text);
  }

  /** The switch that {@code message} is a press of; empty if it is no press. */
  static Optional<Trigger> pressedBy(Message message) {
    if (message instanceof Message.ControlChange change && change.value() >= DOWN_FROM) {
      return Optional.of(new Controller(change.controller(), 0));
    }
    if (message instanceof Message.NoteOn on && on.velocity() > 0) {
      return Optional.of(new Note(on.note(), 0));
    }
    return message instanceof Message.ProgramChange change
        ? Optional.of(new Program(change.program() + 1, 0))
        : Optional.empty();
  }
}
