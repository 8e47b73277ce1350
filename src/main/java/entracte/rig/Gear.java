package entracte.rig;

import java.util.Objects;

/**
 * A MIDI instrument that follows along.
 *
 * @param port the name of the MIDI port it hangs on; empty if it hangs on a device file
 * @param device the device file or FIFO that takes its bytes; empty if it hangs on a port
 * @param channel 1 to 16
 * @param programsFrom 0 or 1: the number that its own display gives to the first program
 */
public record Gear(
    String name, String port, String device, int channel, int programsFrom, Manners manners) {
  public Gear {
    Objects.requireNonNull(port);
    Objects.requireNonNull(device);
    Objects.requireNonNull(manners);
  }

  /** Gear on a MIDI port, with the usual manners. */
  public Gear(String name, String port, int channel, int programsFrom) {
    this(name, port, "", channel, programsFrom, Manners.USUAL);
  }

  /** Which bytes of a bank the gear wants. */
  public enum Banks {
    BOTH,
    HIGH,
    LOW
  }

  /** When a song's program leaves. */
  public enum SendAt {
    /** As soon as the changeover begins: the gear loads while the hands are busy. */
    CHANGEOVER,
    /** Only when the song begins: the last sound may ring on. */
    SONG
  }

  /**
   * How the gear wants to be spoken to.
   *
   * @param settleSeconds how long it takes to load a program
   * @param notesOffOneByOne whether it needs every note off by itself to fall silent
   */
  public record Manners(
      double settleSeconds, Banks banks, SendAt sendAt, boolean notesOffOneByOne) {
    /** Common practice: most synthesizers load a program within 20 to 100 ms. */
    public static final double USUAL_SETTLE_SECONDS = 0.1;

    public static final Manners USUAL =
        new Manners(USUAL_SETTLE_SECONDS, Banks.BOTH, SendAt.CHANGEOVER, false);

    public Manners {
      Objects.requireNonNull(banks);
      Objects.requireNonNull(sendAt);
      if (!(settleSeconds >= 0)) {
        throw new IllegalArgumentException("time runs forward: " + settleSeconds);
      }
    }
  }
}
