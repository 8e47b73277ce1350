package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * How good predictions are for 200 simulated players, each with a set of six changeovers, whose
 * speeds, learning and slips the program does not know.
 */
class PredictionTest {
  private static final int PLAYERS = 200;
  private static final int CHANGEOVERS = 6;

  /** For one player: the changeovers, and what is learned from some runs of each. */
  private record Trained(
      SimulatedPlayer player, List<SimulatedPlayer.Changeover> changeovers, Learned learned) {}

  private static Trained train(long seed, int runs) {
    SimulatedPlayer player = new SimulatedPlayer(seed);
    List<SimulatedPlayer.Changeover> changeovers = new ArrayList<>();
    List<Run> played = new ArrayList<>();
    for (int c = 0; c < CHANGEOVERS; c++) {
      changeovers.add(player.changeover());
    }
    for (int n = 1; n <= runs; n++) {
      for (SimulatedPlayer.Changeover changeover : changeovers) {
        played.add(player.play(changeover, n));
      }
    }
    return new Trained(player, changeovers, Learned.from(SimulatedPlayer.rig(), played));
  }

  /** Of the next times, how many lie between the 10 % and the 90 % mark. */
  private static double held(int runs) {
    int inside = 0;
    for (long seed = 1; seed <= PLAYERS; seed++) {
      Trained trained = train(seed, runs);
      for (SimulatedPlayer.Changeover changeover : trained.changeovers()) {
        Outlook outlook = trained.learned().outlook(changeover.steps());
        double next = trained.player().play(changeover, runs + 1).seconds();
        inside += outlook.below(0.1, 1) <= next && next <= outlook.below(0.9, 1) ? 1 : 0;
      }
    }
    return inside / (double) (PLAYERS * CHANGEOVERS);
  }

  @Test
  void afterFiveRunsEachFourOfFiveNextTimesLieInTheEightyPercentInterval() {
    double held = held(5);
    assertTrue(held >= 0.75 && held <= 0.85, "held " + held);
  }
}
