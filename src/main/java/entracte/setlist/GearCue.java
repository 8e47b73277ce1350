package entracte.setlist;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a piece of MIDI gear is sent for a song.
 *
 * @param program as the gear's display counts it
 * @param bank high and low byte, 0 to 127 each
 * @param fine controllers and parameters of 14 bits, sent after the others
 */
public record GearCue(
    String gear,
    Optional<Integer> program,
    Optional<Bank> bank,
    List<ControlChange> controls,
    List<Fine> fine) {
  public GearCue {
    controls = List.copyOf(controls);
    fine = List.copyOf(fine);
  }

  /** A cue without values of 14 bits. */
  public GearCue(
      String gear, Optional<Integer> program, Optional<Bank> bank, List<ControlChange> controls) {
    this(gear, program, bank, controls, List.of());
  }

  /** Bank select, controllers 0 and 32. */
  public record Bank(int high, int low) {}

  /**
   * One controller, 0 to 127, and its value, 0 to 127.
   *
   * @param written how the player calls the controller: {@code volume}, {@code cc 7}
   */
  public record ControlChange(int controller, int value, String written) {
    public ControlChange {
      Objects.requireNonNull(written);
    }

    /** A controller that is called by its number. */
    public ControlChange(int controller, int value) {
      this(controller, value, "cc " + controller);
    }
  }

  /** What a value of 14 bits is for. */
  public enum FineKind {
    /** A controller from 0 to 31 with its low byte. */
    CONTROLLER("cc"),
    /** A registered parameter: {@code rpn 0} is the range of the bend wheel. */
    REGISTERED("rpn"),
    /** A parameter that is the maker's own. */
    OPEN("nrpn");

    private final String word;

    FineKind(String word) {
      this.word = word;
    }

    /** As it is written: {@code rpn}. */
    public String word() {
      return word;
    }
  }

  /**
   * A value of 14 bits, 0 to 16383.
   *
   * @param written how the player calls it: {@code rpn 0}, {@code fine volume}
   */
  public record Fine(FineKind kind, int number, int value, String written) {
    public Fine {
      Objects.requireNonNull(written);
    }

    /** A value that is called by its number. */
    public Fine(FineKind kind, int number, int value) {
      this(
          kind,
          number,
          value,
          (kind == FineKind.CONTROLLER ? "fine " : "") + kind.word() + " " + number);
    }
  }
}
