package entracte.midi;

/** Where bytes leave the computer: a MIDI port by its name, or a device file. */
public sealed interface Outlet {
  /** How the musician calls it. */
  String name();

  /** A port that the system lists. */
  record Port(String name) implements Outlet {}

  /** A device file or a FIFO that takes raw bytes. */
  record Device(String name) implements Outlet {}
}
