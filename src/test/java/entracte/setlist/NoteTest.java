package entracte.setlist;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoteTest {
  /** OEIS A320304: frequencies of the MIDI keys 0 to 63 at A4 = 440 Hz (ISO 16), rounded. */
  private static final int[] A320304 = {
    8, 9, 9, 10, 10, 11, 12, 12, 13, 14, 15, 15, 16, 17, 18, 19, 21, 22, 23, 24, 26, 28, 29, 31, 33,
    35, 37, 39, 41, 44, 46, 49, 52, 55, 58, 62, 65, 69, 73, 78, 82, 87, 92, 98, 104, 110, 117, 123,
    131, 139, 147, 156, 165, 175, 185, 196, 208, 220, 233, 247, 262, 277, 294, 311
  };

  @Test
  void keysHaveTheirPublishedFrequencies() {
    for (int key = 0; key < A320304.length; key++) {
      double hertz = new Note("any", key).hertz(PitchStandard.ISO_A4_HZ);
      assertEquals(A320304[key], Math.round(hertz), "key " + key);
    }
  }

  /** Middle C is key 60 and A4 key 69 (MIDI 1.0); the lowest A of a piano is A0, key 21. */
  @ParameterizedTest
  @CsvSource({"A4, 69", "C4, 60", "A0, 21", "c-1, 0", "G9, 127", "F#3, 54", "Bb2, 46", "B3, 59"})
  void namesAreKeys(String name, int key) {
    assertEquals(key, Note.parse(name).orElseThrow().number());
  }

  @ParameterizedTest
  @CsvSource({"H2", "A", "4", "A44", "Cis4"})
  void otherNamesAreNoNotes(String name) {
    assertEquals(Optional.empty(), Note.parse(name));
  }
}
