package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class FillTest {
  @Test
  void wordsGoOnTheLineWhileThereIsRoom() {
    assertEquals(List.of("one two", "three"), Fill.lines("one two three", 9, "", ""));
    assertEquals(List.of("one two", "three"), Fill.lines("one two three", 7, "", ""));
  }

  @Test
  void theFirstLineAndTheOthersBeginAsTold() {
    assertEquals(List.of("! one", "  two"), Fill.lines("one two", 6, "! ", "  "));
  }

  @Test
  void aWordLongerThanALineIsCut() {
    assertEquals(List.of("- abc", "  def", "  g h"), Fill.lines("abcdefg h", 5, "- ", "  "));
    assertEquals(List.of("a", "abcde", "fg"), Fill.lines("a abcdefg", 5, "", ""));
  }

  @Test
  void aLetterOfTwoHalvesIsNotCutInTwo() {
    String clef = "\uD834\uDD1E";
    assertEquals(List.of(clef + clef, clef), Fill.lines(clef.repeat(3), 2, "", ""));
  }

  @Test
  void aFigureStaysWithItsWordAndItsUnit() {
    assertEquals(List.of("plug", "osc 1", "(60 cm)"), Fill.lines("plug osc 1 (60 cm)", 8, "", ""));
  }

  @Test
  void wordsThatHaveNoRoomBesideEachOtherArePartedBeforeAFigureIsCut() {
    assertEquals(
        List.of("osc 12", "895.38", "Hz,", "24.3 in"),
        Fill.lines("osc 12 895.38 Hz, 24.3 in", 7, "", ""));
  }

  @Test
  void squareScriptsTakeTwoCells() {
    assertEquals(List.of("\u97F3\u697D", "\u97F3"), Fill.lines("\u97F3\u697D\u97F3", 5, "", ""));
    assertEquals(1, Fill.width("e\u0301"));
  }

  @Test
  void nothingFillsOneEmptyLine() {
    assertEquals(List.of(""), Fill.lines("  ", 10, "", ""));
  }

  @Test
  void aWidthWithoutRoomForAWordIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Fill.lines("a", 2, "! ", ""));
  }
}
