package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class DrillTest {
  private static final long SECOND = 1_000_000_000L;

  private final Drill drill = new Drill(3, 10 * SECOND);

  @Test
  void eachPressEndsAStep() {
    drill.press(12 * SECOND);
    drill.press(13 * SECOND);
    assertFalse(drill.done());
    drill.press(17 * SECOND);
    assertTrue(drill.done());
    assertEquals(List.of(2.0, 1.0, 4.0), drill.each());
    assertEquals(7, drill.seconds());
  }

  @Test
  void aPressAfterTheEndChangesNothing() {
    drill.pressForAll(16 * SECOND);
    drill.press(99 * SECOND);
    assertEquals(6, drill.seconds());
  }

  @Test
  void oneStepBackGivesItsTimeToTheOneDoneAnew() {
    drill.press(12 * SECOND);
    drill.press(13 * SECOND);
    drill.back();
    assertEquals(1, drill.at());
    drill.press(15 * SECOND);
    assertEquals(List.of(2.0, 3.0), drill.each());
  }

  @Test
  void thereIsNothingBeforeTheFirstStep() {
    drill.back();
    assertEquals(0, drill.at());
    assertEquals(0, drill.seconds());
  }

  @Test
  void onePressForAllSharesTheTimeThatIsLeft() {
    drill.press(12 * SECOND);
    drill.pressForAll(16 * SECOND);
    assertEquals(List.of(2.0, 2.0, 2.0), drill.each());
  }
}
