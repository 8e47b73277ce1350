package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Pedals that act as keyboards. Common practice: repeats begin after 250 to 500 ms, 30 ms apart.
 */
final class KeyTapsTest {
  private final KeyTaps taps = new KeyTaps();

  @Test
  void aKeyThatIsHeldPressesOnceAndThenHoldsOnce() {
    int presses = 0;
    int holds = 0;
    for (long at = 0; at < 5000; at = at == 0 ? 500 : at + 30) {
      Optional<Input> heard = taps.hear(Input.NEXT, at);
      presses += heard.equals(Optional.of(Input.NEXT)) ? 1 : 0;
      holds += heard.equals(Optional.of(Input.HOLD)) ? 1 : 0;
    }
    assertEquals(1, presses);
    assertEquals(1, holds);
  }

  @Test
  void aKeyCountsAgainAfterSilence() {
    assertEquals(Optional.of(Input.NEXT), taps.hear(Input.NEXT, 0));
    assertEquals(Optional.of(Input.NEXT), taps.hear(Input.NEXT, KeyTaps.SILENT_MILLIS));
  }

  @Test
  void anImpatientFootIsNoHold() {
    for (long at = 400; at < 4000; at += 400) {
      taps.hear(Input.NEXT, at);
      assertEquals(Optional.empty(), taps.hear(Input.NEXT, at + 200));
    }
  }

  @Test
  void anotherKeyCountsAtOnce() {
    taps.hear(Input.NEXT, 0);
    assertEquals(Optional.of(Input.BACK), taps.hear(Input.BACK, 10));
  }

  @Test
  void aPlayerMayWantMoreSilence() {
    KeyTaps slow = new KeyTaps(1500);
    assertEquals(Optional.of(Input.NEXT), slow.hear(Input.NEXT, 0));
    assertEquals(Optional.empty(), slow.hear(Input.NEXT, 1499));
    assertEquals(Optional.of(Input.NEXT), slow.hear(Input.NEXT, 1499 + 1500));
  }
}
