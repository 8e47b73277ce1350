package entracte.port;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiDevice;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Transmitter;

/**
 * A MIDI device inside this process. Like a real one it is a new object each time it is plugged,
 * and a device that was pulled goes on taking messages without a word.
 */
public final class Loopback implements MidiDevice {
  private static final List<Loopback> PLUGGED = new CopyOnWriteArrayList<>();

  private final Info info;
  private final boolean takes;
  private final List<String> taken = new CopyOnWriteArrayList<>();
  private final List<Tap> taps = new CopyOnWriteArrayList<>();
  private volatile boolean open;
  private volatile Runnable onMessage = () -> {};
  private volatile CountDownLatch jam = new CountDownLatch(0);

  private Loopback(String name, String description, boolean takes) {
    this.info = new Info(name, "nobody", description, "1") {};
    this.takes = takes;
  }

  /** Plugs in a device that takes messages. */
  public static Loopback gear(String name, String description) {
    return plug(new Loopback(name, description, true));
  }

  /** Plugs in a device that gives messages. */
  public static Loopback pedal(String name) {
    return plug(new Loopback(name, "a pedal", false));
  }

  private static Loopback plug(Loopback device) {
    PLUGGED.add(device);
    return device;
  }

  /** Pulls this device out. */
  public void pull() {
    free();
    PLUGGED.remove(this);
  }

  /** Pulls every device out. */
  public static void pullAll() {
    PLUGGED.clear();
  }

  static List<Loopback> plugged() {
    return PLUGGED;
  }

  /** What arrived, each message in hexadecimal. */
  public List<String> taken() {
    return List.copyOf(taken);
  }

  /** Is run on the sender's thread for every message that arrives. */
  public void onMessage(Runnable run) {
    onMessage = run;
  }

  /** From now on whoever sends to it waits, as with a wire that is full. */
  public void jam() {
    jam = new CountDownLatch(1);
  }

  /** What waited arrives. */
  public void free() {
    jam.countDown();
  }

  private void awaitFree() {
    try {
      jam.await();
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }

  /** Gives a message, on the caller's thread, to whoever listens. */
  public void give(int status, int one, int two) {
    try {
      ShortMessage message = new ShortMessage(status, one, two);
      taps.forEach(tap -> tap.give(message));
    } catch (InvalidMidiDataException e) {
      throw new IllegalArgumentException(e);
    }
  }

  @Override
  public Info getDeviceInfo() {
    return info;
  }

  @Override
  public void open() {
    open = true;
  }

  @Override
  public void close() {
    open = false;
    taps.clear();
  }

  @Override
  public boolean isOpen() {
    return open;
  }

  @Override
  public long getMicrosecondPosition() {
    return -1;
  }

  @Override
  public int getMaxReceivers() {
    return takes ? -1 : 0;
  }

  @Override
  public int getMaxTransmitters() {
    return takes ? 0 : -1;
  }

  @Override
  public Receiver getReceiver() throws MidiUnavailableException {
    return new Receiver() {
      @Override
      public void send(MidiMessage message, long timeStamp) {
        awaitFree();
        if (PLUGGED.contains(Loopback.this) && open) {
          taken.add(HexFormat.ofDelimiter(" ").withUpperCase().formatHex(message.getMessage()));
          onMessage.run();
        }
      }

      @Override
      public void close() {}
    };
  }

  @Override
  public List<Receiver> getReceivers() {
    return List.of();
  }

  @Override
  public Transmitter getTransmitter() {
    Tap tap = new Tap();
    taps.add(tap);
    return tap;
  }

  @Override
  public List<Transmitter> getTransmitters() {
    return new ArrayList<>(taps);
  }

  private static final class Tap implements Transmitter {
    private Receiver receiver;

    void give(MidiMessage message) {
      if (receiver != null) {
        receiver.send(message, -1);
      }
    }

    @Override
    public void setReceiver(Receiver newReceiver) {
      receiver = newReceiver;
    }

    @Override
    public Receiver getReceiver() {
      return receiver;
    }

    @Override
    public void close() {}
  }
}
