package entracte.port;

import entracte.midi.Message;
import entracte.midi.Outlet;
import entracte.midi.OutputPort;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiDevice;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.Sequencer;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Transmitter;

/**
 * The MIDI ports of this computer. Nothing is remembered between calls: a device that comes back is
 * another object, so every opening starts from a fresh list.
 */
public final class MidiPorts {
  /** Now, and not by the device's own clock. */
  private static final long AT_ONCE = -1;

  private MidiPorts() {}

  private record Listed(PortName name, MidiDevice device) {}

  /** Every port, in the order of the system. */
  public static List<PortName> list() {
    return devices().stream().map(Listed::name).toList();
  }

  private static List<Listed> devices() {
    List<Listed> devices = new ArrayList<>();
    SoundCards cards = SoundCards.now();
    for (MidiDevice.Info info : MidiSystem.getMidiDeviceInfo()) {
      try {
        MidiDevice device = MidiSystem.getMidiDevice(info);
        if (!(device instanceof Sequencer) && isThere(device, cards)) {
          boolean takes = device.getMaxReceivers() != 0;
          boolean gives = device.getMaxTransmitters() != 0;
          devices.add(
              new Listed(PortName.of(info.getName(), info.getDescription(), takes, gives), device));
        }
      } catch (MidiUnavailableException | IllegalArgumentException gone) {
        // It was unplugged between the list and the question: it is not there.
      }
    }
    return devices;
  }

  /** Only Java's own list of hardware is ever out of date. */
  private static boolean isThere(MidiDevice device, SoundCards cards) {
    boolean fromJava = device.getClass().getName().startsWith("com.sun.media.sound.");
    return !fromJava || cards.mayHave(device.getDeviceInfo().getName());
  }

  private static Optional<MidiDevice> find(String wanted, boolean toTake) {
    List<Listed> fit =
        devices().stream().filter(d -> toTake ? d.name().takes() : d.name().gives()).toList();
    return PortName.find(fit.stream().map(Listed::name).toList(), wanted)
        .map(i -> fit.get(i).device());
  }

  /** Opens the port that takes messages; fails if there is none or another program has it. */
  static OutputPort openOutput(String wanted) throws IOException {
    MidiDevice device =
        find(wanted, true).orElseThrow(() -> new IOException("there is no port " + wanted));
    try {
      device.open();
      return new Output(device, device.getReceiver());
    } catch (MidiUnavailableException busy) {
      throw new IOException("the port " + wanted + " is in use elsewhere", busy);
    }
  }

  /**
   * Listens to the port that gives messages. {@code heard} is called on the device's own thread and
   * must hand over at once.
   *
   * @return what ends the listening
   */
  static AutoCloseable openInput(String wanted, Consumer<Message> heard) throws IOException {
    MidiDevice device =
        find(wanted, false).orElseThrow(() -> new IOException("there is no port " + wanted));
    try {
      device.open();
      Transmitter from = device.getTransmitter();
      from.setReceiver(new Ear(heard));
      return device::close;
    } catch (MidiUnavailableException busy) {
      throw new IOException("the port " + wanted + " is in use elsewhere", busy);
    }
  }

  /**
   * Opens an outlet and closes it again, sending nothing; a device file is only looked at, since to
   * open a FIFO may take forever.
   *
   * @return what is wrong, without a full stop; empty if nothing is
   */
  public static Optional<String> tryOut(Outlet outlet) {
    if (outlet instanceof Outlet.Device device) {
      Path file = Path.of(device.name());
      return Files.isWritable(file)
          ? Optional.empty()
          : Optional.of(Files.exists(file) ? file + " may not be written" : "there is no " + file);
    }
    try {
      openOutput(outlet.name()).close();
      return Optional.empty();
    } catch (IOException trouble) {
      return Optional.of(trouble.getMessage());
    }
  }

  private record Output(MidiDevice device, Receiver receiver) implements OutputPort {
    @Override
    public void send(byte[] bytes) throws IOException {
      try {
        int second = bytes.length > 2 ? bytes[2] : 0;
        receiver.send(new ShortMessage(bytes[0] & 0xFF, bytes[1], second), AT_ONCE);
      } catch (InvalidMidiDataException e) {
        throw new IllegalArgumentException("not a channel message: " + Arrays.toString(bytes), e);
      } catch (IllegalStateException closed) {
        throw new IOException("the port is closed", closed);
      }
    }

    @Override
    public void close() {
      device.close();
    }
  }

  private record Ear(Consumer<Message> heard) implements Receiver {
    @Override
    public void send(MidiMessage message, long timeStamp) {
      Message.read(message.getMessage()).ifPresent(heard);
    }

    @Override
    public void close() {
      // Nothing is held.
    }
  }
}
