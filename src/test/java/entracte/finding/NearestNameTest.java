package entracte.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class NearestNameTest {
  private static final List<String> KEYS = List.of("cutoff", "resonance", "cv amount", "tune");

  @Test
  void aLetterLeftOutPutInChangedOrSwappedCountsOne() {
    assertEquals(0, NearestName.distance("tune", "tune"));
    assertEquals(1, NearestName.distance("tne", "tune"));
    assertEquals(1, NearestName.distance("tuune", "tune"));
    assertEquals(1, NearestName.distance("tone", "tune"));
    assertEquals(1, NearestName.distance("tnue", "tune"));
    assertEquals(4, NearestName.distance("", "tune"));
    assertEquals(4, NearestName.distance("tune", ""));
  }

  /** The textbook case that tells the restricted distance from the full one (which says 2). */
  @Test
  void noStretchIsEditedTwice() {
    assertEquals(3, NearestName.distance("ca", "abc"));
  }

  @Test
  void theNearestNameIsFound() {
    assertEquals(Optional.of("cutoff"), NearestName.of("cuttof", KEYS));
    assertEquals(Optional.of("resonance"), NearestName.of("Resonence", KEYS));
    assertEquals(Optional.of("cv amount"), NearestName.of("cv-amount", KEYS));
  }

  @Test
  void capitalsCountNothing() {
    assertEquals(Optional.of("tune"), NearestName.of("TUNE", KEYS));
    assertEquals(Optional.of("in"), NearestName.of("IN", List.of("out", "in")));
  }

  @Test
  void farNamesAreNotOffered() {
    assertEquals(Optional.empty(), NearestName.of("vibrato", KEYS));
    assertEquals(Optional.empty(), NearestName.of("on", List.of("in")));
    assertEquals(Optional.empty(), NearestName.of("x".repeat(5000), KEYS));
    assertEquals(Optional.empty(), NearestName.of("tune", List.of()));
  }

  @Test
  void ofEquallyNearNamesTheFirstIsOffered() {
    assertEquals(Optional.of("osc 1"), NearestName.of("osc 4", List.of("osc 1", "osc 2")));
  }

  @Test
  void theAdviceNamesTheNearOneOrListsWhatIsKnown() {
    assertEquals("Did you mean \"tune\"?", NearestName.advice("tunne", KEYS));
    assertEquals(
        "Known here: cutoff, resonance, cv amount, tune.", NearestName.advice("vibrato", KEYS));
    assertEquals("", NearestName.advice("vibrato", List.of()));
    assertEquals(
        "Known here: 0, 1, 2, 3, 4, 5, 6, 7 and 9 more.",
        NearestName.advice("vibrato", IntStream.range(0, 17).mapToObj(String::valueOf).toList()));
    assertTrue(
        NearestName.advice("vibrato", IntStream.range(0, 16).mapToObj(String::valueOf).toList())
            .endsWith(", 14, 15."));
  }
}
