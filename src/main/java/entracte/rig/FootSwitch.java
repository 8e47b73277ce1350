package entracte.rig;

import java.util.Objects;

/**
 * The pedal that says "next".
 *
 * @param port the name of its MIDI port; empty for one that acts as a keyboard
 * @param press what it sends, as written: {@code cc 64}, {@code note 60}, {@code page down}
 * @param hold what a long press does, as written: {@code back}, {@code menu} or {@code nothing};
 *     empty if nothing is said of it
 * @param back what a second switch sends that says "back"; empty if there is none
 * @param latching whether each press sends once, down and up in turn
 * @param lockOutSeconds how long after a press nothing counts
 * @param deafSeconds how long after something was sent to the gear nothing counts
 */
public record FootSwitch(
    String port,
    String press,
    String hold,
    String back,
    boolean latching,
    double lockOutSeconds,
    double deafSeconds) {
  /** Common practice: ordinary switches bounce for up to 50 ms, and feet are slower than that. */
  public static final double USUAL_LOCK_OUT_SECONDS = 0.25;

  /** Common practice: a foot that has just sent something is not heard for most of a second. */
  public static final double USUAL_DEAF_SECONDS = 0.8;

  public FootSwitch {
    Objects.requireNonNull(port);
    Objects.requireNonNull(press);
    Objects.requireNonNull(hold);
    Objects.requireNonNull(back);
    if (!(lockOutSeconds >= 0 && deafSeconds >= 0)) {
      throw new IllegalArgumentException("time runs forward: " + lockOutSeconds + deafSeconds);
    }
  }

  /** A switch that is deaf after sending for the usual time. */
  public FootSwitch(
      String port, String press, String hold, String back, boolean latching, double lockOut) {
    this(port, press, hold, back, latching, lockOut, USUAL_DEAF_SECONDS);
  }

  /** A single momentary switch. */
  public FootSwitch(String port, String press, String hold) {
    this(port, press, hold, "", false, USUAL_LOCK_OUT_SECONDS);
  }
}
