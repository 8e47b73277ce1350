package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class LetteringTest {
  private final Lettering lettering = new Lettering();

  @Test
  void accentsGreekCyrillicAndAccidentalsAreInTheFont() {
    String text = "Ménilmontant, Świt, Άνοιξη, Рассвет, F♯ and B♭, 2′";
    assertEquals(text, lettering.clean(text));
    assertEquals(List.of(), lettering.missing());
  }

  @Test
  void whatTheFontLacksBecomesAQuestionMarkAndIsReportedOnce() {
    assertEquals("Tea ??, ?", lettering.clean("Tea 茶茶, 道"));
    assertEquals(List.of("茶 (U+8336)", "道 (U+9053)"), lettering.missing());
  }

  @Test
  void anAccentThatCameApartIsPutBackOnItsLetter() {
    assertEquals("é", lettering.clean("e\u0301"));
  }

  @Test
  void controlCharactersBecomeSpacesAndInvisibleOnesGo() {
    assertEquals("a b c", lettering.clean("a\tb\u200B\uFE0F\u0007c"));
    assertEquals(List.of(), lettering.missing());
  }

  @Test
  void noLineIsWiderThanAskedFor() {
    String text = "keep the plug in the second tap of the multiple beside the mixer";
    for (double width = 20; width < 120; width += 7) {
      for (String line : lettering.wrap(text, Face.PLAIN, 4, width, 0)) {
        assertTrue(lettering.width(line, Face.PLAIN, 4) <= width + 1e-3, line);
      }
    }
  }

  @Test
  void aWordThatIsWiderThanTheLineIsCut() {
    List<String> lines = lettering.wrap("Donaudampfschifffahrt", Face.BOLD, 4, 15, 0);
    assertTrue(lines.size() > 1);
    assertEquals("Donaudampfschifffahrt", String.join("", lines));
  }

  @Test
  void theFirstLineLeavesRoomForItsIndent() {
    List<String> lines = lettering.wrap("one two three four", Face.PLAIN, 4, 40, 25);
    assertTrue(25 + lettering.width(lines.get(0), Face.PLAIN, 4) <= 40 + 1e-3, lines.get(0));
    assertEquals("one two three four", String.join(" ", lines).strip());
  }

  @Test
  void aNameThatIsCutKeepsTheTailThatTellsItFromOthers() {
    double width = lettering.width("Count in: The Long", Face.BOLD, 4);
    List<String> lines =
        lettering.name("Count in: The Long Evening by the Lake", " (2)", Face.BOLD, 4, width, 2);
    assertEquals(2, lines.size());
    assertTrue(lines.get(1).endsWith(".. (2)"), lines.toString());
  }

  @Test
  void aNameThatHasRoomIsWhole() {
    assertEquals(List.of("Count in (2)"), lettering.name("Count in", " (2)", Face.BOLD, 4, 200, 2));
  }
}
