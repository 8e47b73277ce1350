package entracte.port;

import entracte.midi.Dispatch;
import entracte.midi.Message;
import entracte.midi.Outlet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Everything that is plugged to the computer during a show: the outlets that gear hangs on and the
 * port of the pedal. Each is watched by name. Calls return at once; what happens is told to the
 * {@link Listener} on other threads.
 */
public final class Wiring implements AutoCloseable {
  /** How often the list of ports is read. */
  private static final long WATCH_MILLIS = 1000;

  /** What is told of. */
  public interface Listener {
    /** A port is there, or it is not, from now on. */
    void alive(String port, boolean alive);

    /** A dispatch left, or did not. */
    void sent(Sent sent);

    /** The pedal's port gave a message. */
    void heard(Message message);
  }

  private final Listener listener;
  private final Map<Outlet, Lane> lanes = new LinkedHashMap<>();
  private final String pedalPort;
  private final Map<String, Boolean> alive = new LinkedHashMap<>();
  private Optional<AutoCloseable> pedal = Optional.empty();
  private final Supplier<SoundCards> soundCards;
  private SoundCards cards;
  private final Thread watcher;

  /**
   * @param pedalPort the name of the pedal's MIDI port; empty if it has none
   */
  public Wiring(List<Outlet> outlets, String pedalPort, Listener listener) {
    this(outlets, pedalPort, listener, SoundCards::now);
  }

  Wiring(
      List<Outlet> outlets, String pedalPort, Listener listener, Supplier<SoundCards> soundCards) {
    this.listener = listener;
    this.pedalPort = pedalPort;
    this.soundCards = soundCards;
    this.cards = soundCards.get();
    outlets.stream()
        .distinct()
        .forEach(outlet -> lanes.put(outlet, new Lane(outlet, listener::sent)));
    watcher = new Thread(this::watch, "watches the ports");
    watcher.setDaemon(true);
  }

  /** Begins to watch. */
  public void start() {
    watcher.start();
  }

  /** Sends each dispatch on its own outlet's thread; those of one outlet in their order. */
  public void send(List<Dispatch> dispatches) {
    for (Dispatch dispatch : dispatches) {
      Lane lane = lanes.get(dispatch.outlet());
      if (lane == null) {
        throw new IllegalArgumentException("nobody wired " + dispatch.outlet());
      }
      lane.send(dispatch);
    }
  }

  /** Reads the list of ports now. */
  void look() {
    SoundCards before = cards;
    cards = soundCards.get();
    if (cards.replaced(before)) {
      letGo();
    }
    List<PortName> ports = MidiPorts.list();
    for (Lane lane : lanes.values()) {
      boolean there = isThere(ports, lane.outlet());
      if (changed(lane.outlet().name(), there)) {
        if (there) {
          lane.open();
        } else {
          lane.lost();
        }
        listener.alive(lane.outlet().name(), there);
      }
    }
    if (!pedalPort.isEmpty()) {
      lookForPedal(named(ports, PortName::gives, pedalPort));
    }
  }

  /** Something was plugged anew so quickly that no list tells of it. */
  private void letGo() {
    closePedal();
    lanes.values().forEach(Lane::lost);
    for (Lane lane : lanes.values()) {
      if (Boolean.TRUE.equals(alive.put(lane.outlet().name(), false))) {
        listener.alive(lane.outlet().name(), false);
      }
    }
  }

  private static boolean isThere(List<PortName> ports, Outlet outlet) {
    return outlet instanceof Outlet.Device device
        ? Files.exists(Path.of(device.name()))
        : named(ports, PortName::takes, outlet.name());
  }

  private static boolean named(List<PortName> ports, Predicate<PortName> fit, String name) {
    return PortName.find(ports.stream().filter(fit).toList(), name).isPresent();
  }

  private boolean changed(String name, boolean there) {
    Boolean before = alive.put(name, there);
    return before == null || before != there;
  }

  private void lookForPedal(boolean there) {
    if (there && pedal.isEmpty()) {
      try {
        pedal = Optional.of(MidiPorts.openInput(pedalPort, listener::heard));
      } catch (IOException busy) {
        // Tried again in a second; until then the pedal counts as absent.
      }
    } else if (!there) {
      closePedal();
    }
    if (changed("pedal:" + pedalPort, pedal.isPresent())) {
      listener.alive(pedalPort, pedal.isPresent());
    }
  }

  private void closePedal() {
    pedal.ifPresent(Quietly::close);
    pedal = Optional.empty();
  }

  private void watch() {
    try {
      while (true) {
        look();
        Thread.sleep(WATCH_MILLIS);
      }
    } catch (InterruptedException ended) {
      closePedal();
    }
  }

  /** Lets go of every port, without waiting for one that hangs. */
  @Override
  public void close() {
    watcher.interrupt();
    lanes.values().forEach(Lane::lost);
  }

  /** Closing what may be gone already. */
  static final class Quietly {
    private Quietly() {}

    static void close(AutoCloseable open) {
      try {
        open.close();
      } catch (Exception gone) { // AutoCloseable says Exception; a MIDI device throws none
        // It is closed, which was the aim.
      }
    }
  }
}
