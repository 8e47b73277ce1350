package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.Checker;
import entracte.check.PlayableSet;
import entracte.read.ReadSet;
import entracte.read.SetReader;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * In the middle of the evening nothing may get worse: whatever song it is before, the rest, planned
 * anew from the rig as it stands, has no more moves than the plan in force still had. Invented
 * data: the demo sets.
 */
final class ReplanTest {
  @Test
  void theRestOfAnEveningIsNoDearerThanItWas() {
    for (String name : List.of("sets/kitchen-table", "sets/orchard-barn")) {
      PlayableSet set = playable(name);
      Plan plan = planned(set, Options.defaults());
      for (int song = 1; song < plan.songs().size(); song++) {
        int[] rest = IntStream.range(song, plan.songs().size()).toArray();
        Start start = Start.midSet(plan.songs().get(song - 1).state());
        Options options = Options.defaults().withStart(start).withNear(plan);
        Plan anew = planned(set.inOrder(rest), options.withSeconds(0));
        int inForce = IntStream.of(rest).map(s -> plan.changeovers().get(s).moves()).sum();
        assertTrue(anew.moves() <= inForce, name + " from song " + (song + 1));
      }
    }
  }

  private static Plan planned(PlayableSet set, Options options) {
    Plan plan = ((Result.Planned) Planner.plan(set, options)).plan();
    assertEquals(List.of(), Verifier.verify(plan));
    return plan;
  }

  private static PlayableSet playable(String folder) {
    ReadSet read = SetReader.read(Path.of(folder));
    return Checker.check(read.setList().orElseThrow(), read.places()).set().orElseThrow();
  }
}
