package entracte.rig;

import java.util.Locale;

/** How an attenuating knob goes from nothing to all. */
public enum Taper {
  /** The middle of the scale is half. */
  LINEAR,
  /** Slow at first, as for loudness; no two are quite alike. */
  AUDIO,
  /** Nobody has said. */
  UNKNOWN;

  /** What an audio taper passes in the middle: 10 to 20 % is common practice, not a standard. */
  private static final double AUDIO_AT_HALF = 0.15;

  private static final double HALF = 0.5;

  /**
   * The part of the voltage that passes.
   *
   * @param turned how far the knob is turned up, from 0 to 1. Audio tapers are made of two straight
   *     tracks that meet in the middle; one that nobody has named is taken as linear
   */
  public double passes(double turned) {
    return switch (this) {
      case LINEAR, UNKNOWN -> turned;
      case AUDIO ->
          turned <= HALF
              ? turned / HALF * AUDIO_AT_HALF
              : AUDIO_AT_HALF + (turned - HALF) / HALF * (1 - AUDIO_AT_HALF);
    };
  }

  /** How far the knob is turned up where it lets this part pass: {@link #passes} turned round. */
  public double turned(double part) {
    return switch (this) {
      case LINEAR, UNKNOWN -> part;
      case AUDIO ->
          part <= AUDIO_AT_HALF
              ? part / AUDIO_AT_HALF * HALF
              : HALF + (part - AUDIO_AT_HALF) / (1 - AUDIO_AT_HALF) * HALF;
    };
  }

  /** {@code linear}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
