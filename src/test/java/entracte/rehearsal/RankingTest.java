package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.plan.Plan;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Two changeovers of {@link KitchenDances}: to song 2 in 30 s, to song 3 in 40 s. */
class RankingTest {
  private static final Plan PLAN = KitchenDances.plan();
  private static final CueSheet SHEET = CueSheet.of(PLAN, Pace.estimated());

  private static List<Run> runs(int cue, double... seconds) {
    Cue way = SHEET.cues().get(cue);
    List<Run> runs = new ArrayList<>();
    for (double each : seconds) {
      runs.add(
          new Run(
              Instant.ofEpochSecond(runs.size()),
              Run.Where.REHEARSAL,
              way.song(),
              Mark.of(way.steps()),
              each,
              0,
              new Makeup(Map.of()),
              List.of()));
    }
    return runs;
  }

  private static Learned learned(List<Run> toSecond, List<Run> toThird) {
    List<Run> all = new ArrayList<>(toSecond);
    all.addAll(toThird);
    return Learned.from(PLAN.setList().rig(), all);
  }

  private static int next(Learned learned) {
    return Ranking.byGain(SHEET, learned).get(0).cue().number();
  }

  @Test
  void theSetUpIsNeverPractisedByItself() {
    List<Integer> numbers =
        Ranking.standings(SHEET, learned(List.of(), List.of())).stream()
            .map(standing -> standing.cue().number())
            .toList();
    assertEquals(List.of(2, 3), numbers);
  }

  @Test
  void whatRunsOverItsGapComesBeforeWhatFits() {
    Learned tight = learned(runs(1, 50, 44, 40, 37), runs(2, 21, 20, 20, 20));
    assertEquals(2, next(tight));
    Learned other = learned(runs(1, 15, 14, 14, 14), runs(2, 70, 62, 57, 54));
    assertEquals(3, next(other));
  }

  @Test
  void whereBothFitTheOneThatStillFallsComesFirst() {
    Learned learned =
        learned(runs(1, 10, 10, 10, 10, 10, 10, 10, 10), runs(2, 16, 13.5, 12, 11, 10.4, 10, 9.7));
    assertEquals(3, next(learned));
  }

  @Test
  void theWorstIsTheOneFurthestOverItsGap() {
    Learned learned = learned(runs(1, 33, 33, 33, 33), runs(2, 90, 90, 90, 90));
    assertEquals(3, Ranking.worst(SHEET, learned).get(0).cue().number());
  }

  @Test
  void oneMoreRunNeverSavesLessThanNothingToSpeakOf() {
    for (Standing each : Ranking.standings(SHEET, learned(List.of(), List.of()))) {
      assertTrue(each.secondsSaved() > 0 && each.overSaved() > 0, each.cue().song());
    }
  }
}
