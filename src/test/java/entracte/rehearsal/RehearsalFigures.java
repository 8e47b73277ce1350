package entracte.rehearsal;

import entracte.check.PlayableSet;
import entracte.plan.Options;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Prints the figures that the page on rehearsing tells; the tests beside it hold them. */
@Tag("benchmark")
class RehearsalFigures {
  private static final List<String> SETS = List.of("sets/kitchen-table", "sets/orchard-barn");
  private static final int WHOLE = 100;

  /** Each search ends by its rounds, if the machine is quick enough. */
  private static final double LONGEST_SEARCH_SECONDS = 120;

  @Test
  void howOftenTheEightyPercentIntervalHoldsTheNextTime() {
    for (int runs : new int[] {0, 1, 2, 3, 5, 8, 12}) {
      say("after %d runs each it holds %.1f %%", runs, WHOLE * PredictionTest.held(runs));
    }
  }

  @Test
  void howWellTheLengthOfASetIsForetold() {
    PredictionTest.Lengths lengths = PredictionTest.lengths();
    say("any set: within 5 %% for %d of 200", lengths.within());
    say("changeovers alone off by %.1f %% on average", WHOLE * lengths.meanError());
    for (String folder : SETS) {
      SetLengthPredictionTest test = new SetLengthPredictionTest();
      test.playAll(folder);
      say("%s", test.told(folder));
    }
  }

  @Test
  void whatPlanningForOnesOwnSecondsSaves() {
    Options options = Options.defaults().withTime(LONGEST_SEARCH_SECONDS);
    double[][] players = {{1, 1}, {2, 0.5}, {0.5, 2}};
    for (String folder : SETS) {
      PlayableSet set = FastestTest.set(folder);
      for (double[] player : players) {
        FastestTest.Pair pair = FastestTest.plans(set, player[0], player[1], options);
        say(
            "%s, plugs x %s, knobs x %s: fewest %d moves %.1f s, fastest %d moves %.1f s",
            folder,
            player[0],
            player[1],
            pair.fewest().moves(),
            pair.fewest().seconds(pair.tempo()),
            pair.fastest().moves(),
            pair.fastest().seconds(pair.tempo()));
      }
    }
  }

  private static void say(String format, Object... values) {
    System.out.printf(Locale.ROOT, format + "%n", values);
  }
}
