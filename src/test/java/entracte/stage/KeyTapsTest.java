package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Pedals that act as keyboards. Common practice: repeats begin after 250 to 500 ms, 30 ms apart.
 */
final class KeyTapsTest {
  private final KeyTaps taps = KeyTaps.onStage(0);

  @Test
  void aKeyThatIsHeldPressesOnceAndThenHoldsOnce() {
    int presses = 0;
    int holds = 0;
    for (long at = 0; at < 5000; at = at == 0 ? 500 : at + 30) {
      Optional<Input> heard = taps.hear(Input.NEXT, at, false);
      presses += heard.equals(Optional.of(Input.NEXT)) ? 1 : 0;
      holds += heard.equals(Optional.of(Input.HOLD)) ? 1 : 0;
    }
    assertEquals(1, presses);
    assertEquals(1, holds);
  }

  @Test
  void aKeyCountsAgainAtOnceAfterALongSilence() {
    assertEquals(Optional.of(Input.NEXT), taps.hear(Input.NEXT, 0, false));
    assertEquals(
        Optional.of(Input.NEXT), taps.hear(Input.NEXT, KeyTaps.LATEST_REPEAT_MILLIS, false));
  }

  /** What the stage is told of strokes, which asks every 10 ms what has settled. */
  private List<Input> told(boolean inMenu, long... strokes) {
    List<Input> told = new ArrayList<>();
    int next = 0;
    for (long at = 0; at < strokes[strokes.length - 1] + 1000; at += 10) {
      for (; next < strokes.length && strokes[next] <= at; next++) {
        taps.hear(Input.NEXT, strokes[next], inMenu).ifPresent(told::add);
      }
      taps.settled(at).ifPresent(told::add);
    }
    return told;
  }

  private static long[] held(long delay, long until) {
    return LongStream.concat(
            LongStream.of(0), LongStream.iterate(delay, at -> at < until, at -> at + 44))
        .toArray();
  }

  @Test
  void honestPressesAreAllHeardThoughTheyComeFasterThanALateRepeat() {
    assertEquals(
        List.of(Input.NEXT, Input.NEXT, Input.NEXT, Input.NEXT), told(false, 0, 600, 1300, 2090));
  }

  /** A machine whose keys repeat after 0.66 s, as a user had one; it was two presses. */
  @Test
  void aKeyThatRepeatsLateIsOnePressAndOneHold() {
    for (long delay : new long[] {200, 250, 500, 660, 790}) {
      assertEquals(List.of(Input.NEXT), told(false, held(delay, 890)), "after " + delay);
      last();
      assertEquals(List.of(Input.NEXT, Input.HOLD), told(false, held(delay, 3000)));
      last();
      assertEquals(List.of(Input.NEXT, Input.HOLD), told(true, held(delay, 3000)));
      last();
    }
  }

  /** Another key, so that the next stroke is a press whatever was before. */
  private void last() {
    taps.hear(Input.UNDO, 0, false);
  }

  @Test
  void inAMenuPressesMayBeQuicker() {
    assertEquals(List.of(Input.NEXT, Input.NEXT, Input.NEXT), told(true, 0, 250, 500));
  }

  @Test
  void afterAHoldTheKeyIsMuteUntilItWasLetGo() {
    assertEquals(List.of(Input.NEXT, Input.HOLD), told(true, held(500, 1500)));
    assertEquals(Optional.empty(), taps.hear(Input.NEXT, 1500 + 300, true));
    assertEquals(Optional.empty(), taps.settled(1500 + 900));
    assertEquals(Optional.of(Input.NEXT), taps.hear(Input.NEXT, 1500 + 1200, true));
  }

  @Test
  void aKeyThatHasDoneItsWorkHoldsNoMore() {
    taps.hear(Input.ENTER, 0, true);
    taps.lock();
    for (long at = 500; at < 3000; at += 44) {
      assertEquals(Optional.empty(), taps.hear(Input.ENTER, at, false));
    }
    assertEquals(Optional.of(Input.ENTER), taps.hear(Input.ENTER, 4000, false));
  }

  @Test
  void anImpatientFootIsNoHold() {
    for (long at = 400; at < 4000; at += 400) {
      taps.hear(Input.NEXT, at, false);
      assertEquals(Optional.empty(), taps.hear(Input.NEXT, at + 200, false));
    }
  }

  @Test
  void anotherKeyCountsAtOnce() {
    taps.hear(Input.NEXT, 0, false);
    assertEquals(Optional.of(Input.BACK), taps.hear(Input.BACK, 10, false));
  }

  @Test
  void aPlayerMayWantMoreSilence() {
    KeyTaps slow = KeyTaps.onStage(1500);
    assertEquals(Optional.of(Input.NEXT), slow.hear(Input.NEXT, 0, false));
    assertEquals(Optional.empty(), slow.hear(Input.NEXT, 1499, false));
    assertEquals(Optional.of(Input.NEXT), slow.hear(Input.NEXT, 1499 + 1500, false));
  }
}
