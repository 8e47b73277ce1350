package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.plan.oracle.Answer;
import entracte.plan.oracle.CpSatOracle;
import entracte.plan.sample.FullSets;
import entracte.plan.sample.Sample;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The planner, a general solver and a plain annealer on the same sets in one run. Prints tables in
 * Markdown, as they stand in {@code src/docs/planner.md}. Times are halved, or doubled, by {@code
 * -Dbenchmark.pace=0.5} or 2; on {@code -Dbenchmark.sets} depends how many sets of each size there
 * are.
 */
@Tag("benchmark")
final class PlannerRaceTest {
  private static final double PACE = Double.parseDouble(System.getProperty("benchmark.pace", "1"));
  private static final int SETS = Integer.getInteger("benchmark.sets", 1);
  private static final int CORES = 2;

  /** Songs and modules, and the seconds that planner, planner again, rivals have. */
  private static final List<double[]> SIZES =
      List.of(
          new double[] {4, 8, 1, 60, 60, 60},
          new double[] {6, 12, 1, 60, 60, 60},
          new double[] {8, 14, 3, 60, 30, 60},
          new double[] {10, 16, 3, 60, 30, 60},
          new double[] {12, 20, 3, 60, 30, 60},
          new double[] {20, 24, 10, 60, 60, 60},
          new double[] {30, 40, 10, 60, 60, 60});

  @Test
  void besideItsRivals() {
    print(
        "| songs/modules | seed | ours, seconds | moves | ours, seconds | moves | bound | gap |"
            + " plain annealer, seconds | moves | ours to its | CP-SAT, seconds | moves | bound |"
            + " gap | our gap to its |");
    print("|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|");
    for (double[] size : SIZES) {
      for (int seed = 1; seed <= SETS; seed++) {
        compare(FullSets.loose(seed, (int) size[0], (int) size[1]), seed, size);
      }
    }
  }

  private static void compare(Sample sample, int seed, double[] size) {
    double quickSeconds = size[2] * PACE;
    double longSeconds = size[3] * PACE;
    Result.Planned quick = planned(sample, quickSeconds);
    Result.Planned thorough = planned(sample, longSeconds);
    Problem problem = new Problem(sample.set(), sample.start());
    int plain = new PlainAnnealer(problem, 1).moves(size[4] * PACE);
    Answer answer =
        CpSatOracle.race(
            sample.set(), sample.start(), size[5] * PACE, CORES, pairs(problem, sample.start()));
    boolean solved = answer.plan().isPresent();
    int moves = thorough.plan().moves();
    int gap = moves - thorough.lowerBound();
    int theirBound = Math.max(0, answer.movesBound());
    int theirGap = answer.moves() - theirBound;
    assertTrue(!solved || thorough.lowerBound() <= answer.moves(), "a bound is contradicted");
    print(
        "| %d/%d | %d | %s | %d | %s | %d | %d | %d | %s | %d | %.3f | %s | %s | %s | %s | %s |"
            .formatted(
                (int) size[0],
                (int) size[1],
                seed,
                seconds(quick),
                quick.plan().moves(),
                seconds(thorough),
                moves,
                thorough.lowerBound(),
                gap,
                size[4] * PACE,
                plain,
                (double) quick.plan().moves() / plain,
                size[5] * PACE,
                solved ? answer.moves() : "none",
                solved ? theirBound : "-",
                solved ? theirGap : "-",
                solved && theirGap > 0 ? "%.2f".formatted((double) gap / theirGap) : "-"));
  }

  /** What two neighbouring songs cost at least, for the changeover before each but the first. */
  private static int[] pairs(Problem problem, Start start) {
    int[] pairs = new int[problem.songs()];
    try (Workers workers = new Workers()) {
      for (int song = 1; song < pairs.length; song++) {
        Bounds bounds = new Bounds(problem.window(song - 1, song + 1), workers, () -> false);
        bounds.improve(2, 2_000, () -> Integer.MAX_VALUE);
        pairs[song] = start.midSet() && song == 1 ? 0 : bounds.whole();
      }
    }
    return pairs;
  }

  @Test
  void asSongsAndModulesGrow() {
    print("| songs | modules | 50,000 steps of annealing, seconds | ratio to the first |");
    print("|---|---|---|---|");
    double first = 0;
    for (int songs : new int[] {6, 12, 24, 48, 96}) {
      first = growth(songs, 16, first);
    }
    first = 0;
    for (int modules : new int[] {8, 16, 32, 64, 120}) {
      first = growth(12, modules, first);
    }
  }

  private static double growth(int songs, int modules, double first) {
    Sample sample = FullSets.loose(1, songs, modules);
    Problem problem = new Problem(sample.set(), sample.start());
    Casting casting = ((FirstCasting.Found.Cast) new FirstCasting(problem).find()).casting();
    Annealer annealer = new Annealer(problem, casting, Stock.LOOSE, 1);
    annealer.anneal(10_000, 1, () -> false);
    long begun = System.nanoTime();
    annealer.anneal(50_000, 1, () -> false);
    double seconds = (System.nanoTime() - begun) / 1e9;
    double ratio = first == 0 ? 1 : seconds / first;
    print("| %d | %d | %.2f | %.2f |".formatted(songs, modules, seconds, ratio));
    return first == 0 ? seconds : first;
  }

  @Test
  void aHundredSongsOnAHundredAndTwentyModules() {
    Sample sample = FullSets.loose(1, 100, 120);
    Result.Planned planned = planned(sample, 50 * PACE);
    long used = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    print(
        "100 songs, 120 modules: %d moves, bound %d, %.1f s, at most %d MiB in use"
            .formatted(
                planned.plan().moves(), planned.lowerBound(), planned.searchSeconds(), used >> 20));
  }

  private static Result.Planned planned(Sample sample, double seconds) {
    Options options = Options.defaults().withStart(sample.start()).withSeconds(seconds);
    Result.Planned planned = (Result.Planned) Planner.plan(sample.set(), options);
    assertEquals(List.of(), Verifier.verify(planned.plan()));
    return planned;
  }

  private static String seconds(Result.Planned planned) {
    String word = planned.proven() ? ", proven" : "";
    return String.format(Locale.ROOT, "%.1f%s", planned.searchSeconds(), word);
  }

  private static void print(String line) {
    System.out.println(line);
  }
}
