package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.stage.Night.Past;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is said of warmth and of old tunings, and when. */
class DriftTest {
  private static final long MINUTE = 60_000;

  private final Drift drift = new Drift(OptionalDouble.of(1200), OptionalDouble.of(2700));
  private final SmallShow small = new SmallShow().begin();
  private final long start = small.night.now().since();

  @Test
  void inTheSetUpItCountsDownToTheFirstTuning() {
    assertEquals(
        Optional.of("Warming up: do not tune for another 15 min."),
        drift.says(small.night, start + 5 * MINUTE));
    assertEquals(
        Optional.of("Warm since 2 min: tuning holds now."),
        drift.says(small.night, start + 22 * MINUTE));
  }

  @Test
  void duringASongNothingIsSaid() {
    small.next(4);
    assertEquals(Phase.SONG, small.night.phase());
    assertEquals(Optional.empty(), drift.says(small.night, small.now + 90 * MINUTE));
  }

  @Test
  void aChangeoverRemindsWhenTheTuningIsOld() {
    small.next(5);
    assertEquals(Phase.CHANGEOVER, small.night.phase());
    long began = small.night.now().began();
    assertEquals(Optional.empty(), drift.says(small.night, began + 45 * MINUTE));
    assertEquals(
        Optional.of("Last tuned 46 min ago: tune again, unheard."),
        drift.says(small.night, began + 46 * MINUTE));
  }

  @Test
  void aTuningThatWasTickedOffStartsTheTimeAnew() {
    small.next(5);
    long began = small.night.now().began();
    Past tuned =
        new Past(small.night.now(), "TUNE osc 1 (octave changed)", true, began + 30 * MINUTE);
    Night night = new Night(small.night.now(), List.of(tuned));
    assertEquals(Optional.empty(), drift.says(night, began + 60 * MINUTE));
  }

  @Test
  void withoutAWordInTheRigNothingIsSaid() {
    assertEquals(Optional.empty(), Drift.unknown().says(small.night, start + 5 * MINUTE));
  }
}
