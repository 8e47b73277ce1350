package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against another way: the cheapest walk through all positions that any song names as a limit. */
@DisplayName("The turns of a control where some changeovers are dearer")
class TurnTimesTest {
  private static final int COLUMNS = 8;
  private static final long NEVER = Long.MAX_VALUE / 4;

  static IntStream seeds() {
    return IntStream.range(0, 300);
  }

  @ParameterizedTest(name = "weigh the least in case {0}")
  @MethodSource("seeds")
  void weighTheLeast(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double start = seed % 3 == 0 ? random.nextInt(6) : Double.NaN;
    double[] factors =
        IntStream.range(0, COLUMNS).mapToDouble(c -> 1 + random.nextInt(4)).toArray();
    Start from = seed % 2 == 0 ? Start.bare() : Start.midSet(Start.bare().state());
    Weights weights = Weights.of(from).pressed(factors);
    double[][] wants = wants(random);
    ControlLedger ledger = new ControlLedger(new double[] {start}, COLUMNS, weights);
    for (int column = 1; column < COLUMNS; column++) {
      if (wants[column] != null) {
        ledger.want(0, column, wants[column][0], wants[column][1], wants[column][0]);
      }
    }
    assertEquals(cheapestWalk(start, wants, weights), ledger.cost(0));
    long sum =
        ledger.times().orElseThrow().turns(0).stream().mapToLong(t -> weights.at(t.column())).sum();
    assertEquals(ledger.cost(0), sum, "what the turns listed come to");
  }

  private static double[][] wants(SplittableRandom random) {
    double[][] wants = new double[COLUMNS][];
    for (int column = 1; column < COLUMNS; column++) {
      if (random.nextInt(3) > 0) {
        double low = random.nextInt(6);
        wants[column] = new double[] {low, low + random.nextInt(3)};
      }
    }
    return wants;
  }

  private static long cheapestWalk(double start, double[][] wants, Weights weights) {
    double[] positions =
        Arrays.stream(wants).filter(w -> w != null).mapToDouble(w -> w[0]).distinct().toArray();
    long[] costs = new long[positions.length];
    Arrays.fill(costs, NEVER);
    long untouched = 0;
    for (int column = 1; column < wants.length; column++) {
      long turned = Math.min(untouched, Arrays.stream(costs).min().orElse(NEVER));
      for (int p = 0; p < positions.length; p++) {
        costs[p] = Math.min(costs[p], turned + weights.at(column));
        costs[p] = suits(positions[p], wants[column]) ? costs[p] : NEVER;
      }
      untouched = suits(start, wants[column]) ? untouched : NEVER;
    }
    return Math.min(untouched, Arrays.stream(costs).min().orElse(NEVER));
  }

  private static boolean suits(double position, double[] want) {
    return want == null || (want[0] <= position && position <= want[1]);
  }
}
