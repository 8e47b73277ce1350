package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How far the hands turn and throw, on the plan of {@link KitchenDances}. */
class ExtentTest {
  private static final CueSheet SHEET = CueSheet.of(KitchenDances.plan(), Pace.estimated());

  @Test
  void aKnobTurnsAPartOfItsScale() {
    assertEquals(0.25, step(1, "TURN filter 1 cutoff from 4 to 6.5").size(), 1e-12);
    assertEquals(0.5, step(2, "TURN mix 1 channel 1 level from 7 to 2").size(), 1e-12);
  }

  @Test
  void aKnobFromAnUnknownPositionMayTurnAllOfIt() {
    assertEquals(1, step(0, "TURN filter 1 resonance to 3").size());
  }

  @Test
  void aSwitchPassesPositions() {
    assertEquals(1, step(2, "SWITCH osc 1 octave from 8 to 16").size());
    assertEquals(1, step(0, "SWITCH osc 2 octave to 4").size());
  }

  @Test
  void plugsHaveNoSize() {
    List<Step> plugs =
        Stream.of(1, 2)
            .flatMap(cue -> SHEET.cues().get(cue).steps().stream())
            .filter(step -> step.verb() == Verb.PLUG || step.verb() == Verb.MOVE)
            .toList();
    assertEquals(6, plugs.size());
    assertEquals(0, plugs.stream().mapToDouble(Step::size).sum());
  }

  private static Step step(int cue, String text) {
    return SHEET.cues().get(cue).steps().stream()
        .filter(step -> step.text().equals(text))
        .findFirst()
        .orElseThrow(() -> new AssertionError(SHEET.cues().get(cue).steps().toString()));
  }
}
