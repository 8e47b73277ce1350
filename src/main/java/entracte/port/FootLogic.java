package entracte.port;

import entracte.midi.Message;
import entracte.midi.Trigger;
import java.util.Optional;

/**
 * Tells presses of a foot from what a switch sends. Pure: time comes in with each message.
 *
 * <p>A press is the step from up to down. It counts if the switch was steady before (contacts
 * bounce for up to 50 ms, when the foot comes and when it goes) and if the lock-out of the last
 * press is over. A latching switch sends once for every press, down and up in turn, so for it every
 * step is a press. A switch that only taps (a program change) has no up; repeats of it count as
 * one, until it has been silent for the lock-out. A foot that stays down is told once, as a hold.
 */
public final class FootLogic {
  /** Longer than ordinary contacts bounce, shorter than any foot. */
  private static final long STEADY_MILLIS = 60;

  /** How long a foot stays down to mean it. */
  public static final long HOLD_MILLIS = 700;

  private static final long NEVER = Long.MIN_VALUE / 2;

  /** What the foot did. */
  public enum Foot {
    PRESS,
    HOLD
  }

  private final Trigger trigger;
  private final boolean latching;
  private final long lockOutMillis;

  private boolean down;
  private boolean holdPending;
  private long changedAt = NEVER;
  private long pressedAt = NEVER;

  public FootLogic(Trigger trigger, boolean latching, long lockOutMillis) {
    this.trigger = trigger;
    this.latching = latching;
    this.lockOutMillis = lockOutMillis;
  }

  /** What {@code message} means, if it comes from this switch. */
  public Optional<Foot> hear(Message message, long nowMillis) {
    return switch (trigger.sense(message)) {
      case NOTHING -> Optional.empty();
      case TAP -> tap(nowMillis);
      case DOWN -> step(true, nowMillis);
      case UP -> step(false, nowMillis);
    };
  }

  /** Whether the foot has by now stayed down long enough for a hold; told once a press. */
  public Optional<Foot> stays(long nowMillis) {
    if (holdPending && down && nowMillis - pressedAt >= HOLD_MILLIS) {
      holdPending = false;
      return Optional.of(Foot.HOLD);
    }
    return Optional.empty();
  }

  private Optional<Foot> tap(long nowMillis) {
    boolean counts = nowMillis - changedAt >= Math.max(lockOutMillis, STEADY_MILLIS);
    changedAt = nowMillis;
    return counts ? Optional.of(Foot.PRESS) : Optional.empty();
  }

  private Optional<Foot> step(boolean newDown, long nowMillis) {
    if (newDown == down) {
      return Optional.empty(); // some pedals repeat themselves
    }
    boolean steady = nowMillis - changedAt >= STEADY_MILLIS;
    down = newDown;
    changedAt = nowMillis;
    boolean press = newDown || latching;
    if (!newDown && steady) {
      holdPending = false;
    }
    if (!press || !steady || nowMillis - pressedAt < lockOutMillis) {
      return Optional.empty();
    }
    pressedAt = nowMillis;
    holdPending = !latching;
    return Optional.of(Foot.PRESS);
  }
}
