package entracte.plan;

import static entracte.check.PatchBuilder.patch;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import entracte.check.PatchBuilder;
import entracte.check.PlayableSet;
import entracte.check.RigBuilder;
import entracte.check.SetBuilder;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two songs on equal modules are an assignment problem. For each pair of a role of the first song
 * and one of the second there are as many knobs as the pair shall cost, which the one role wants at
 * 1 and the other at 2 and nobody else names. One module for both turns them between the songs; on
 * two modules each is set before the show.
 */
final class AssignmentAsSetTest {
  private static final int ROUNDS = 12;
  private static final int SIZE = 4;
  private static final int DEAREST = 4;

  /**
   * The first: documentation of SciPy, {@code linear_sum_assignment}; total 5. The second: a
   * textbook example of the Hungarian method; total 13, also by trying every order.
   */
  @ParameterizedTest
  @CsvSource({"4 1 3/2 0 5/3 2 2, 5", "9 2 7 8/6 4 3 7/5 8 1 8/7 6 9 4, 13"})
  void publishedAssignmentsCostWhatTheyShould(String matrix, int cost) {
    assertEquals(cost, moves(read(matrix)));
  }

  @Test
  void randomAssignmentsCostWhatAnotherAlgorithmSays() {
    SplittableRandom random = new SplittableRandom(11);
    for (int round = 0; round < ROUNDS; round++) {
      int[][] costs = new int[SIZE][SIZE];
      for (int[] row : costs) {
        for (int column = 0; column < SIZE; column++) {
          row[column] = random.nextInt(DEAREST + 1);
        }
      }
      assertEquals(reference(costs), moves(costs), "round " + round);
    }
  }

  private static int[][] read(String matrix) {
    String[] rows = matrix.split("/");
    int[][] costs = new int[rows.length][];
    for (int row = 0; row < rows.length; row++) {
      String[] cells = rows[row].split(" ");
      costs[row] = new int[cells.length];
      for (int column = 0; column < cells.length; column++) {
        costs[row][column] = Integer.parseInt(cells[column]);
      }
    }
    return costs;
  }

  private static int moves(int[][] costs) {
    Result.Planned planned =
        assertInstanceOf(Result.Planned.class, Planner.plan(setOf(costs), Options.defaults()));
    assertEquals(List.of(), Verifier.verify(planned.plan()));
    return planned.plan().moves();
  }

  private static PlayableSet setOf(int[][] costs) {
    List<String> knobs = new ArrayList<>();
    PatchBuilder first = patch("first");
    PatchBuilder second = patch("second");
    for (int one = 0; one < costs.length; one++) {
      first.role("one " + one, "dials");
      second.role("two " + one, "dials");
      for (int other = 0; other < costs.length; other++) {
        for (int knob = 0; knob < costs[one][other]; knob++) {
          String name = "k %d %d %d".formatted(one, other, knob);
          knobs.add(name);
          first.set("one " + one, name, "1");
          second.set("two " + other, name, "2");
        }
      }
    }
    String[] modules = new String[costs.length];
    for (int module = 0; module < modules.length; module++) {
      modules[module] = "m " + module + ": dials";
    }
    RigBuilder rig =
        RigBuilder.rig()
            .kind(
                "dials",
                k -> {
                  knobs.forEach(name -> k.knob(name, 0, 10));
                  return k;
                })
            .row(modules);
    return SetBuilder.playable(rig.build(), first.song(), second.song());
  }

  /** Kuhn and Munkres, as JGraphT has it. */
  private static int reference(int[][] costs) {
    SimpleWeightedGraph<String, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    Set<String> left = new HashSet<>();
    Set<String> right = new HashSet<>();
    for (int each = 0; each < costs.length; each++) {
      left.add("l" + each);
      right.add("r" + each);
    }
    left.forEach(graph::addVertex);
    right.forEach(graph::addVertex);
    for (int one = 0; one < costs.length; one++) {
      for (int other = 0; other < costs.length; other++) {
        graph.setEdgeWeight(graph.addEdge("l" + one, "r" + other), costs[one][other]);
      }
    }
    return (int)
        Math.round(
            new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, left, right)
                .getMatching()
                .getWeight());
  }
}
