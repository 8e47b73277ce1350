package entracte.rehearsal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What all of a player's runs say of the laws of learning. A player who learns one changeover
 * quickly mostly learns the others quickly as well; so each changeover's own runs count in full,
 * and those of the others by a part, for nobody learns everything alike. After three rehearsals of
 * a whole set that is the difference between three runs to judge a law by, and three of each.
 */
final class LawEvidence {
  /** How much another changeover tells. An estimate; 0 nothing, 1 as much as its own. */
  private static final double SHARED = 0.5;

  private final List<Law.Weighted> laws = Law.all();
  private final Map<String, double[]> own = new HashMap<>();
  private final double[] all = new double[laws.size()];

  /**
   * Adds the runs of one changeover.
   *
   * @param trainedSeconds what a trained hand of this player is expected to take; above 0
   */
  void add(String mark, double trainedSeconds, double doubt, List<Double> seconds) {
    double[] each = new double[all.length];
    for (int law = 0; law < each.length; law++) {
      each[law] = Outlook.level(trainedSeconds, doubt, seconds, laws.get(law).law()).logEvidence();
      all[law] += each[law];
    }
    own.put(mark, each);
  }

  /** The laws for a changeover, weighed by what the others say; the weights sum to 1. */
  List<Law.Weighted> laws(String mark) {
    double[] its = own.getOrDefault(mark, new double[all.length]);
    double[] logs = new double[all.length];
    for (int law = 0; law < logs.length; law++) {
      logs[law] = Math.log(laws.get(law).weight()) + SHARED * (all[law] - its[law]);
    }
    double most = Arrays.stream(logs).max().orElseThrow();
    double sum = Arrays.stream(logs).map(log -> Math.exp(log - most)).sum();
    List<Law.Weighted> weighed = new ArrayList<>();
    for (int law = 0; law < logs.length; law++) {
      weighed.add(new Law.Weighted(laws.get(law).law(), Math.exp(logs[law] - most) / sum));
    }
    return weighed;
  }
}
