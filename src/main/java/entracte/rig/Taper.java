package entracte.rig;

import java.util.Locale;

/** How an attenuating knob goes from nothing to all. */
public enum Taper {
  /** The middle of the scale is half. */
  LINEAR,
  /** Slow at first, as for loudness; no figure follows from the scale. */
  AUDIO,
  /** Nobody has said. */
  UNKNOWN;

  /** {@code linear}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
