package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Letters are written as escapes: an editor would turn the line round while it is read. */
class VisualTest {
  @Test
  void whatRunsFromLeftToRightStays() {
    String text = "Élégie, Рассвет (2) in F♯";
    assertEquals(text, Visual.order(text));
  }

  /** Unicode UAX 9: letters of class R are shown from right to left, figures among them are not. */
  @ParameterizedTest
  @CsvSource({
    "To 2 \u05D0\u05D1\u05D2 now, To 2 \u05D2\u05D1\u05D0 now",
    "\u05D0\u05D1 12, 12 \u05D1\u05D0",
    "\u05D0(\u05D1)\u05D2, \u05D2(\u05D1)\u05D0"
  })
  void hebrewIsDrawnFromTheRight(String logical, String drawn) {
    assertEquals(drawn, Visual.order(logical));
  }

  @Test
  void aPointStaysBehindTheLetterItSitsOn() {
    assertEquals("\u05D1\u05D0\u05B8", Visual.order("\u05D0\u05B8\u05D1"));
  }

  @Test
  void lettersThatJoinCannotBeSet() {
    assertTrue(Visual.isJoined(0x0644));
    assertFalse(Visual.isJoined(0x05D0));
    assertFalse(Visual.isJoined('a'));
  }
}
