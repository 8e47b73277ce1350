package entracte.rig;

import java.util.Locale;

/** What a jack carries, as far as it matters what it is plugged to. */
public enum Signal {
  /** What is heard. */
  AUDIO,
  /** What moves a setting: an envelope, a wheel, a slow oscillator. */
  CONTROL,
  /** A voltage that stands for a note, so many volts an octave. */
  PITCH,
  /** On or off: a key is down, a beat begins. */
  GATE;

  /** {@code audio}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
