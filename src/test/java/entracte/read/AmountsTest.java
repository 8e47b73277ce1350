package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Figures, times and lengths, as written. */
final class AmountsTest {
  private static void seconds(double expected, String text) {
    assertEquals(OptionalDouble.of(expected), Amounts.seconds(text), text);
  }

  @Test
  void times() {
    seconds(40, "40 s");
    seconds(40, "40s");
    seconds(0.3, "300 ms");
    seconds(1.25, "1 s 250 ms");
    seconds(2.5, "2.5 s");
    seconds(150, "2:30");
    seconds(60, "1 min");
    seconds(90, "1.5 min");
    seconds(90, "1 min 30 s");
    seconds(3723, "1:02:03");
    seconds(3600, "1 h");
    seconds(3600, "60:00");
    seconds(0, "0 s");
    seconds(-5, "-5 s");
    seconds(8, "0:08");
  }

  @Test
  void whatIsNoTime() {
    for (String text :
        List.of(
            "",
            " ",
            "40",
            "40 sec",
            "2:75",
            "2:3",
            ":30",
            "1:60:00",
            "s",
            "min",
            "4 s 1 min",
            "forty s",
            "1e3 s",
            "999999999 s",
            "2:30 s")) {
      assertEquals(OptionalDouble.empty(), Amounts.seconds(text), text);
    }
  }

  @Test
  void unitsOfOtherHabitsArePutRight() {
    assertEquals("40 s", Amounts.respeltTime("40 sec"));
    assertEquals("40 s", Amounts.respeltTime("40secs."));
    assertEquals("1 min 30 s", Amounts.respeltTime("1 minute 30 seconds"));
    assertEquals("2 h", Amounts.respeltTime("2 hours"));
    assertEquals("section", Amounts.respeltTime("section"));
  }

  @Test
  void lengths() {
    assertEquals(Optional.of("30"), Amounts.centimetres("30 cm").map(BigDecimal::toPlainString));
    assertEquals(Optional.of("90"), Amounts.centimetres("0.9 m").map(BigDecimal::toPlainString));
    assertEquals(Optional.of("4.5"), Amounts.centimetres("45mm").map(BigDecimal::toPlainString));
    assertEquals(Optional.empty(), Amounts.centimetres("30"));
    assertEquals(Optional.empty(), Amounts.centimetres("3 ft"));
  }

  @Test
  void figures() {
    assertEquals(OptionalInt.of(10), Amounts.whole("010"));
    assertEquals(OptionalInt.of(-3), Amounts.whole("-3"));
    assertEquals(OptionalInt.empty(), Amounts.whole("0x1F"));
    assertEquals(OptionalInt.empty(), Amounts.whole("1_000"));
    assertEquals(OptionalInt.empty(), Amounts.whole("1234567890"));
    assertEquals(OptionalDouble.of(6.5), Amounts.decimal("6.5"));
    assertEquals(OptionalDouble.empty(), Amounts.decimal("1e3"));
    assertEquals(OptionalDouble.empty(), Amounts.decimal(".5"));
    assertEquals(OptionalDouble.empty(), Amounts.decimal("NaN"));
  }
}
