package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JsonTest {
  @Test
  void whatIsWrittenReadsTheSame() {
    Map<String, Object> value = new LinkedHashMap<>();
    value.put("text", "quote \" back \\ line \n bell \u0007 flat \u266D clef \uD834\uDD1E");
    value.put("numbers", List.of(6.5, 0.1, 1e-7, -3.0, 123456789.0));
    value.put("nested", List.of(List.of("a", "b"), List.of(), Map.of()));
    value.put("yes", true);
    value.put("nothing", null);
    assertEquals(value, StrictJson.read(Json.write(value)));
  }

  @Test
  void halfALetterIsEscapedSoThatTheFileStaysUtf8() {
    assertEquals("\"\\ud834\"\n", Json.write("\uD834"));
    assertEquals("\"\\udd1ex\"\n", Json.write("\uDD1Ex"));
  }

  @Test
  void wholeFiguresHaveNoFraction() {
    assertEquals("[4, 6.5, 100, 7]\n", Json.write(List.of(4.0, 6.5, 100.0, 7)));
  }

  @Test
  void whatJsonCannotSayIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Json.write(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Json.write(new Object()));
  }
}
