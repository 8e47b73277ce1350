package entracte.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jgrapht.alg.matching.HopcroftKarpMaximumCardinalityBipartiteMatching;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;
import org.junit.jupiter.api.Test;

final class MatchingTest {
  private static final int CASES = 500;

  @Test
  void aLargestMatchingIsAsLargeAsHopcroftAndKarpFind() {
    Random random = new Random(11);
    for (int i = 0; i < CASES; i++) {
      int rights = 1 + random.nextInt(9);
      List<int[]> options = options(random, 1 + random.nextInt(9), rights);
      assertEquals(reference(options, rights), new Matching(options, rights).size());
    }
  }

  @Test
  void everyChoiceIsAnOptionAndNoneIsTakenTwice() {
    Random random = new Random(12);
    for (int i = 0; i < CASES; i++) {
      int rights = 1 + random.nextInt(9);
      List<int[]> options = options(random, 1 + random.nextInt(9), rights);
      Matching matching = new Matching(options, rights);
      Set<Integer> taken = new HashSet<>();
      for (int left = 0; left < options.size(); left++) {
        int right = matching.chosen(left);
        if (right != Matching.NONE) {
          assertTrue(taken.add(right));
          assertTrue(java.util.Arrays.stream(options.get(left)).anyMatch(o -> o == right));
        }
      }
      assertEquals(matching.size(), taken.size());
    }
  }

  @Test
  void thoseTooManyHaveFewerOptionsThanTheyAre() {
    Random random = new Random(13);
    int incomplete = 0;
    for (int i = 0; i < CASES; i++) {
      int rights = 1 + random.nextInt(9);
      List<int[]> options = options(random, 1 + random.nextInt(9), rights);
      Matching matching = new Matching(options, rights);
      Set<Integer> shared = new HashSet<>();
      matching.tooMany().stream()
          .forEach(left -> java.util.Arrays.stream(options.get(left)).forEach(shared::add));
      assertEquals(matching.complete(), matching.tooMany().isEmpty());
      if (!matching.complete()) {
        incomplete++;
        assertEquals(matching.tooMany().cardinality() - 1, shared.size());
      }
    }
    assertTrue(incomplete > CASES / 10, "the test sees too few crowds: " + incomplete);
  }

  private static List<int[]> options(Random random, int lefts, int rights) {
    double density = random.nextDouble();
    List<int[]> options = new ArrayList<>();
    for (int left = 0; left < lefts; left++) {
      options.add(
          java.util.stream.IntStream.range(0, rights)
              .filter(r -> random.nextDouble() < density)
              .toArray());
    }
    return options;
  }

  private static int reference(List<int[]> options, int rights) {
    SimpleGraph<String, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    Set<String> lefts = new HashSet<>();
    Set<String> rightNames = new HashSet<>();
    for (int left = 0; left < options.size(); left++) {
      lefts.add("left " + left);
    }
    for (int right = 0; right < rights; right++) {
      rightNames.add("right " + right);
    }
    lefts.forEach(graph::addVertex);
    rightNames.forEach(graph::addVertex);
    for (int left = 0; left < options.size(); left++) {
      for (int right : options.get(left)) {
        graph.addEdge("left " + left, "right " + right);
      }
    }
    return new HopcroftKarpMaximumCardinalityBipartiteMatching<>(graph, lefts, rightNames)
        .getMatching()
        .getEdges()
        .size();
  }
}
