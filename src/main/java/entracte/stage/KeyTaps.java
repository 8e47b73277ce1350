package entracte.stage;

import java.util.Optional;

/**
 * Presses of a pedal that acts as a keyboard. A terminal hears no key come up: a key that is held
 * repeats after 250 to 500 ms and then every 30 ms or so (common practice). So the same key counts
 * again only after it was silent for longer than that, and a key that repeats for most of a second
 * is a foot that stays down.
 */
public final class KeyTaps {
  /** Longer than the silence between a key's first stroke and its first repeat. */
  public static final long SILENT_MILLIS = 550;

  public static final long HOLD_MILLIS = 900;

  /** Strokes that follow faster come from a key that repeats by itself. */
  private static final long QUICKEST_HAND_MILLIS = 150;

  private final long silentMillis;
  private Input last = Input.MENU;
  private long firstAt;
  private long lastAt = Long.MIN_VALUE / 2;
  private boolean holdTold;

  public KeyTaps() {
    this(0);
  }

  /**
   * @param lockOutMillis how long the same key must be silent at least
   */
  public KeyTaps(long lockOutMillis) {
    silentMillis = Math.max(SILENT_MILLIS, lockOutMillis);
  }

  /** What a stroke of a key means; empty if it is only a repeat. */
  public Optional<Input> hear(Input input, long nowMillis) {
    boolean repeats = input == last && nowMillis - lastAt < silentMillis;
    boolean byItself = nowMillis - lastAt < QUICKEST_HAND_MILLIS;
    last = input;
    lastAt = nowMillis;
    if (!repeats) {
      firstAt = nowMillis;
      holdTold = false;
      return Optional.of(input);
    }
    if (!holdTold && byItself && nowMillis - firstAt >= HOLD_MILLIS) {
      holdTold = true;
      return Optional.of(Input.HOLD);
    }
    return Optional.empty();
  }
}
