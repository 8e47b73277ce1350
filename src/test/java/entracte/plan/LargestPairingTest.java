package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.jgrapht.alg.matching.HopcroftKarpMaximumCardinalityBipartiteMatching;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;
import org.junit.jupiter.api.Test;

/** The verifier's pairing against JGraphT's (Hopcroft and Karp 1973). */
final class LargestPairingTest {
  private static final int RIGHT = 1000;

  @Test
  void itIsAsLargeAsThatOfAnotherAlgorithm() {
    SplittableRandom random = new SplittableRandom(7);
    int uneven = 0;
    for (int round = 0; round < 500; round++) {
      List<Integer> left = IntStream.range(0, 1 + random.nextInt(15)).boxed().toList();
      List<Integer> right = IntStream.range(RIGHT, RIGHT + 1 + random.nextInt(15)).boxed().toList();
      double density = random.nextDouble() * 0.5;
      Set<List<Integer>> edges = new HashSet<>();
      for (int one : left) {
        for (int other : right) {
          if (random.nextDouble() < density) {
            edges.add(List.of(one, other));
          }
        }
      }
      int size = LargestPairing.size(left, right, (l, r) -> edges.contains(List.of(l, r)));
      assertEquals(reference(left, right, edges), size, "round " + round);
      uneven += size < Math.min(left.size(), right.size()) ? 1 : 0;
    }
    assertTrue(uneven > 100, "only " + uneven + " rounds leave someone alone");
  }

  private static int reference(List<Integer> left, List<Integer> right, Set<List<Integer>> edges) {
    SimpleGraph<Integer, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    left.forEach(graph::addVertex);
    right.forEach(graph::addVertex);
    edges.forEach(edge -> graph.addEdge(edge.get(0), edge.get(1)));
    return new HopcroftKarpMaximumCardinalityBipartiteMatching<>(
            graph, new HashSet<>(left), new HashSet<>(right))
        .getMatching()
        .getEdges()
        .size();
  }
}
