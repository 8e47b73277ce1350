package entracte.stage;

import java.util.Optional;

/**
 * Presses of a pedal that acts as a keyboard. A terminal hears no key come up: a key that is held
 * repeats after 250 to 660 ms and then every 30 to 90 ms (common practice, and one user's machine).
 * So a pause decides: a stroke after a long silence is a press, strokes that follow fast come from
 * a key that repeats by itself, and a key that does so for most of a second is a foot that stays
 * down. From a hold on, the key says nothing until it was let go.
 *
 * <p>A stroke after a middling silence is in doubt: the first repeat of a key, or a second press?
 * The next repeat would follow at once, so {@link #settled} calls it a press if none does.
 */
public final class KeyTaps {
  /** A key that was silent for less has not been let go, or a foot has trembled. */
  public static final long SILENT_MILLIS = 550;

  /** No key waits longer with its first repeat. */
  public static final long LATEST_REPEAT_MILLIS = 800;

  public static final long HOLD_MILLIS = 900;

  /** Strokes that follow faster come from a key that repeats by itself. */
  public static final long QUICKEST_HAND_MILLIS = 150;

  private final long silentMillis;
  private final long latestMillis;
  private final long lineMillis;
  private Input last = Input.MENU;
  private long firstAt;
  private long lastAt = Long.MIN_VALUE / 2;
  private boolean locked;
  private boolean doubtful;

  private KeyTaps(long silentMillis, long latestMillis, long lineMillis) {
    this.silentMillis = silentMillis;
    this.latestMillis = latestMillis;
    this.lineMillis = lineMillis;
  }

  /** For whoever asks for no {@link #settled}: every stroke after the silence is a press. */
  public static KeyTaps atOnce() {
    return new KeyTaps(SILENT_MILLIS, SILENT_MILLIS, SILENT_MILLIS);
  }

  /**
   * For the stage, which asks again and again what has {@link #settled}.
   *
   * @param lockOutMillis how long the same key must be silent at least
   */
  public static KeyTaps onStage(long lockOutMillis) {
    long silent = Math.max(SILENT_MILLIS, lockOutMillis);
    long line = Math.max(QUICKEST_HAND_MILLIS, lockOutMillis);
    return new KeyTaps(silent, Math.max(LATEST_REPEAT_MILLIS, silent), line);
  }

  /**
   * What a stroke of a key means; empty if it is only a repeat, or in doubt.
   *
   * @param inMenu whether presses go through lines, where a hand is quicker than between moves
   */
  public Optional<Input> hear(Input input, long nowMillis, boolean inMenu) {
    long silence = nowMillis - lastAt;
    boolean same = input == last;
    last = input;
    lastAt = nowMillis;
    doubtful = false;
    if (!same || silence >= latestMillis) {
      return Optional.of(press());
    }
    if (silence >= QUICKEST_HAND_MILLIS) {
      doubtful = silence >= (inMenu && !locked ? lineMillis : silentMillis);
      return Optional.empty();
    }
    boolean holds = !locked && nowMillis - firstAt >= HOLD_MILLIS;
    locked |= holds;
    return holds ? Optional.of(Input.HOLD) : Optional.empty();
  }

  /** The stroke that was in doubt, if no repeat has followed by now: a press it was. */
  public Optional<Input> settled(long nowMillis) {
    return doubtful && nowMillis - lastAt >= QUICKEST_HAND_MILLIS
        ? Optional.of(press())
        : Optional.empty();
  }

  /** The key has done what it can do: it says nothing more until it was let go. */
  public void lock() {
    locked = true;
  }

  private Input press() {
    firstAt = lastAt;
    locked = false;
    doubtful = false;
    return last;
  }
}
