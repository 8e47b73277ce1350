package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Letters that are read from two metres. */
final class LargeLettersTest {
  @Test
  void theTablesAreWhatTheOutlinesGive() throws Exception {
    for (int size = 0; size < LetterMaker.sizes(); size++) {
      try (InputStream in = LargeLetters.class.getResourceAsStream(LetterMaker.name(size))) {
        String committed = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(LetterMaker.table(size), committed.lines().toList());
      }
    }
  }

  @Test
  void aLetterLooksLikeItself() {
    List<String> rows = LargeLetters.draw("L", 40, 6).orElseThrow();
    List<String> drawn =
        rows.stream().map(String::stripTrailing).filter(r -> !r.isEmpty()).toList();
    assertEquals(
        List.of(" ██", " ██", " ██", " ▀▀▀▀"),
        List.of(drawn.get(0), drawn.get(1), drawn.get(2), drawn.get(drawn.size() - 1)).stream()
            .map(String::stripTrailing)
            .toList());
  }

  @Test
  void theLargestThatFitsIsTaken() {
    assertEquals(10, LargeLetters.draw("Kettle", 80, 10).orElseThrow().size());
    assertEquals(6, LargeLetters.draw("Kettle", 80, 9).orElseThrow().size());
    assertEquals(Optional.empty(), LargeLetters.draw("Kettle", 80, 5));
    assertEquals(Optional.empty(), LargeLetters.draw("Kettle", 10, 20));
  }

  @Test
  void longTitlesBreakAtBlanks() {
    List<String> rows = LargeLetters.draw("Ladder Wood", 40, 12).orElseThrow();
    assertEquals(12, rows.size());
    rows.forEach(row -> assertTrue(row.length() <= 40, row));
  }

  @Test
  void accentsGreekCyrillicAndFlatsAreThere() {
    for (String text : List.of("Été à Łódź", "Ωδή", "Ночь", "B♭ F♯")) {
      assertTrue(LargeLetters.draw(text, 200, 6).isPresent(), text);
    }
  }

  @Test
  void whatTheFontDoesNotCoverIsLeftToPlainText() {
    assertEquals(Optional.empty(), LargeLetters.draw("日本", 200, 20));
  }
}
