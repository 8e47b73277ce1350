package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TimeTextTest {
  @Test
  void shortStretchesStayInSeconds() {
    assertEquals("0 s", TimeText.of(0.4));
    assertEquals("45 s", TimeText.of(45));
    assertEquals("59 s", TimeText.of(59.4));
  }

  @Test
  void longOnesAreSaidInMinutes() {
    assertEquals("1 min", TimeText.of(59.6));
    assertEquals("1 min 3 s", TimeText.of(63));
    assertEquals("1 min 40 s", TimeText.of(99.6));
    assertEquals("2 min", TimeText.of(120));
    assertEquals("75 min 1 s", TimeText.of(4501));
  }

  @Test
  void aClockIsShort() {
    assertEquals("0:45", TimeText.clock(45.4));
    assertEquals("1:03", TimeText.clock(62.6));
    assertEquals("75:00", TimeText.clock(4500));
  }
}
