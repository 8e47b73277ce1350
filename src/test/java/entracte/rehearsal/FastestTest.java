package entracte.rehearsal;

import static entracte.check.PatchBuilder.patch;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.Checker;
import entracte.check.PlayableSet;
import entracte.check.RigBuilder;
import entracte.check.SetBuilder;
import entracte.plan.Aim;
import entracte.plan.Options;
import entracte.plan.Plan;
import entracte.plan.Planner;
import entracte.plan.Result;
import entracte.plan.Tempo;
import entracte.plan.Verifier;
import entracte.read.ReadSet;
import entracte.read.SetReader;
import entracte.setlist.Song;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Planning for a player's own seconds against planning for the fewest moves. How much it saves on
 * the demo sets hangs on how good both searches are; the page on rehearsing tells what was measured
 * with {@link RehearsalFigures}. What must always hold is tested here.
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

  /**
   * Two songs on two equal oscillators. Two knobs and a switch stand otherwise in the second song:
   * three moves, or the cord of two plugs goes from the one oscillator to the other, which is two.
   */
  private static PlayableSet knobsOrPlugs() {
    return SetBuilder.playable(
        RigBuilder.commonKinds()
            .row("osc 1: oscillator", "osc 2: oscillator", "out: output")
            .build(),
        voice("low", "-5", "0", "32"),
        voice("high", "5", "10", "2"));
  }

  private static Song voice(String name, String tune, String width, String octave) {
    return patch(name)
        .role("voice", "oscillator")
        .cord("voice.saw", "out.left")
        .set("voice", "tune", tune)
        .set("voice", "width", width)
        .set("voice", "octave", octave)
        .song();
  }

  @Test
  void whoIsSlowWithPlugsGetsMoreMovesThatTakeLessTime() {
    PlayableSet set = knobsOrPlugs();
    Pair pair = plans(set, 6, 0.5);
    assertEquals(2, pair.fewest().moves());
    assertEquals(3, pair.fastest().moves());
    assertTrue(pair.saved() > 1, "saved " + pair.saved() + " s");
  }

  @Test
  void whoIsSlowWithKnobsGetsTheFewestMoves() {
    Pair pair = plans(knobsOrPlugs(), 0.5, 6);
    assertEquals(2, pair.fastest().moves());
  }

  @Test
  void fastestTakesNoLongerThanFewest() {
    Pair pair = plans(set("sets/kitchen-table"), 2, 0.5);
    assertTrue(pair.saved() >= -ROUNDING, "saved " + pair.saved() + " s");
  }

  @Test
  void onTheKitchenTableNothingIsQuicker() {
    PlayableSet set = set("sets/kitchen-table");
    Tempo tempo = player(set, 2, 0.5).tempo(set.setList().rig());
    Options options = Options.defaults().withAim(Aim.FASTEST).withTempo(tempo);
    assertTrue(((Result.Planned) Planner.plan(set, options)).quickest());
  }

  @Tag("heavy")
  @ParameterizedTest
  @CsvSource({
    "sets/kitchen-table, 1, 1",
    "sets/kitchen-table, 0.5, 2",
    "sets/orchard-barn, 1, 1",
    "sets/orchard-barn, 2, 0.5",
    "sets/orchard-barn, 0.5, 2"
  })
  void fastestTakesNoLongerThanFewestForAnyPlayer(String folder, double plug, double turn) {
    Pair pair = plans(set(folder), plug, turn);
    assertTrue(pair.saved() >= -ROUNDING, "saved " + pair.saved() + " s");
  }

  /** Both plans of one set, and the player they are timed for. */
  record Pair(Plan fewest, Plan fastest, Tempo tempo) {
    /** The seconds between songs that planning for the player's seconds saves. */
    double saved() {
      return fewest.seconds(tempo) - fastest.seconds(tempo);
    }
  }

  static PlayableSet set(String folder) {
    ReadSet read = SetReader.read(Path.of(folder));
    return Checker.check(read.setList().orElseThrow(), read.places()).set().orElseThrow();
  }

  private static Pair plans(PlayableSet set, double plug, double turn) {
    return plans(set, plug, turn, Options.defaults());
  }

  static Pair plans(PlayableSet set, double plug, double turn, Options options) {
    Tempo tempo = player(set, plug, turn).tempo(set.setList().rig());
    Plan fewest = plan(set, options);
    Plan fastest = plan(set, options.withAim(Aim.FASTEST).withTempo(tempo).withNear(fewest));
    assertEquals(List.of(), Verifier.verify(fastest, Aim.FASTEST));
    return new Pair(fewest, fastest, tempo);
  }

  private static Plan plan(PlayableSet set, Options options) {
    return ((Result.Planned) Planner.plan(set, options)).plan();
  }
}
