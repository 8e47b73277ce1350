package entracte.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jgrapht.alg.connectivity.KosarajuStrongConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;
import org.junit.jupiter.api.Test;

final class KnotsTest {
  private static final int CASES = 300;

  @Test
  void knotsAreThoseThatKosarajuFinds() {
    Random random = new Random(21);
    for (int i = 0; i < CASES; i++) {
      List<List<Integer>> next = graph(random, 1 + random.nextInt(12));
      Set<Set<Integer>> found = new HashSet<>();
      Knots.of(next).forEach(knot -> found.add(Set.copyOf(knot)));
      assertEquals(reference(next), found);
    }
  }

  @Test
  void aLongChainIsSearchedWithoutRecursion() {
    List<List<Integer>> next = new ArrayList<>();
    for (int i = 1; i < 200_000; i++) {
      next.add(List.of(i));
    }
    next.add(List.of(0));
    assertEquals(1, Knots.of(next).size());
  }

  private static List<List<Integer>> graph(Random random, int nodes) {
    double density = random.nextDouble() * 0.4;
    List<List<Integer>> next = new ArrayList<>();
    for (int from = 0; from < nodes; from++) {
      List<Integer> links = new ArrayList<>();
      for (int to = 0; to < nodes; to++) {
        if (to != from && random.nextDouble() < density) {
          links.add(to);
        }
      }
      next.add(links);
    }
    return next;
  }

  private static Set<Set<Integer>> reference(List<List<Integer>> next) {
    SimpleDirectedGraph<Integer, DefaultEdge> graph = new SimpleDirectedGraph<>(DefaultEdge.class);
    for (int node = 0; node < next.size(); node++) {
      graph.addVertex(node);
    }
    for (int node = 0; node < next.size(); node++) {
      for (int to : next.get(node)) {
        graph.addEdge(node, to);
      }
    }
    return new HashSet<>(new KosarajuStrongConnectivityInspector<>(graph).stronglyConnectedSets());
  }
}
