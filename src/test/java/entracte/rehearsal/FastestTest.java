package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.Checker;
import entracte.check.PlayableSet;
import entracte.plan.Aim;
import entracte.plan.Options;
import entracte.plan.Plan;
import entracte.plan.Planner;
import entracte.plan.Result;
import entracte.plan.Tempo;
import entracte.plan.Verifier;
import entracte.read.ReadSet;
import entracte.read.SetReader;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The demo sets planned for the fewest seconds of a player whose log shows slow plugs or slow
 * knobs, against the plan of the fewest moves. With three songs both are the same plan; the barn
 * set saves 1 s of 408 for a usual player, 9 s of 489 for slow plugs, 18 s of 423 for slow knobs.
 */
class FastestTest {
  private static final int STEPS = 60;
  private static final double ROUNDING = 1e-9;

  /** What is learned from one long run, step by step, at these factors on the model. */
  private static Learned player(PlayableSet set, double plug, double turn) {
    List<Run.Split> each = new ArrayList<>();
    for (int i = 0; i < STEPS; i++) {
      each.add(new Run.Split(3 * plug, new Makeup(Map.of(Work.PLUG, 3.0))));
      each.add(new Run.Split(3 * turn, new Makeup(Map.of(Work.TURN, 3.0))));
      each.add(new Run.Split(1.5, new Makeup(Map.of(Work.READ, 1.5))));
    }
    Makeup whole = Makeup.sum(each.stream().map(Run.Split::makeup).toList());
    double seconds = each.stream().mapToDouble(Run.Split::seconds).sum();
    Run run = new Run(Instant.EPOCH, Run.Where.REHEARSAL, "any", "any", seconds, 0, whole, each);
    return Learned.from(set.setList().rig(), List.of(run));
  }

  @ParameterizedTest
  @CsvSource({
    "sets/kitchen-table, 1, 1, 0",
    "sets/kitchen-table, 2, 0.5, 0",
    "sets/orchard-barn, 0.5, 2, 10"
  })
  void fastestTakesNoLongerThanFewest(String folder, double plug, double turn, double atLeast) {
    double saved = saved(folder, plug, turn);
    assertTrue(saved >= atLeast - ROUNDING, "saved " + saved + " s");
  }

  @Tag("heavy")
  @ParameterizedTest
  @CsvSource({"sets/orchard-barn, 1, 1, 0", "sets/orchard-barn, 2, 0.5, 5"})
  void fastestTakesNoLongerThanFewestForOthersToo(
      String folder, double plug, double turn, double atLeast) {
    double saved = saved(folder, plug, turn);
    assertTrue(saved >= atLeast - ROUNDING, "saved " + saved + " s");
  }

  /** The seconds between songs that planning for this player's seconds saves. */
  private static double saved(String folder, double plug, double turn) {
    ReadSet read = SetReader.read(Path.of(folder));
    PlayableSet set =
        Checker.check(read.setList().orElseThrow(), read.places()).set().orElseThrow();
    Tempo tempo = player(set, plug, turn).tempo(set.setList().rig());
    Plan fewest = plan(set, Options.defaults());
    Plan fastest =
        plan(set, Options.defaults().withAim(Aim.FASTEST).withTempo(tempo).withNear(fewest));
    assertEquals(List.of(), Verifier.verify(fastest));
    return fewest.seconds(tempo) - fastest.seconds(tempo);
  }

  private static Plan plan(PlayableSet set, Options options) {
    return ((Result.Planned) Planner.plan(set, options)).plan();
  }
}
