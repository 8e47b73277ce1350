package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jgrapht.alg.flow.mincost.CapacityScalingMinimumCostFlow;
import org.jgrapht.alg.flow.mincost.MinimumCostFlowProblem.MinimumCostFlowProblemImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.DirectedWeightedMultigraph;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Against the capacity scaling algorithm of jgrapht, an independent library. */
@DisplayName("The minimum-cost flow")
class MinCostFlowTest {
  private static final int NODES = 12;

  private record Arc(int from, int to, int capacity, int price) {}

  @Test
  @DisplayName("costs what another library's does, on 200 random networks")
  void costsWhatAnotherLibrarysDoes() {
    SplittableRandom random = new SplittableRandom(7);
    for (int round = 0; round < 200; round++) {
      List<Arc> arcs = arcs(random);
      int units = 1 + random.nextInt(5);
      MinCostFlow ours = new MinCostFlow(NODES);
      arcs.forEach(a -> ours.arc(a.from(), a.to(), a.capacity(), a.price()));
      ours.arc(0, NODES - 1, units, 0);
      assertEquals(theirs(arcs, units), ours.send(units), "in round " + round);
    }
  }

  @Test
  @DisplayName("costs what another library's does once an arc with something on it is shut")
  void costsWhatAnotherLibrarysDoesOnceAnArcIsShut() {
    SplittableRandom random = new SplittableRandom(8);
    int shut = 0;
    for (int round = 0; round < 200; round++) {
      List<Arc> arcs = arcs(random);
      int units = 1 + random.nextInt(5);
      MinCostFlow ours = new MinCostFlow(NODES);
      int[] numbers =
          arcs.stream()
              .mapToInt(a -> ours.arc(a.from(), a.to(), a.capacity(), a.price()))
              .toArray();
      ours.arc(0, NODES - 1, units, 0);
      long whole = ours.send(units);
      for (int i = 0; i < numbers.length; i++) {
        if (ours.flow(numbers[i]) > 0) {
          List<Arc> others = new ArrayList<>(arcs);
          others.remove(i);
          MinCostFlow copy = ours.copy();
          assertEquals(theirs(others, units), whole + copy.shut(numbers[i]), "in round " + round);
          assertEquals(0, copy.flow(numbers[i]));
          shut++;
        }
      }
    }
    assertTrue(shut > 200, "only " + shut + " arcs were shut");
  }

  @Test
  @DisplayName("finds no way around the only arc")
  void findsNoWayAroundTheOnlyArc() {
    MinCostFlow flow = new MinCostFlow(3);
    int first = flow.arc(0, 1, 1, -3);
    flow.arc(1, 2, 1, -4);
    assertEquals(-7, flow.send(1));
    assertEquals(MinCostFlow.NO_WAY, flow.shut(first));
  }

  private static List<Arc> arcs(SplittableRandom random) {
    List<Arc> arcs = new ArrayList<>();
    for (int from = 0; from < NODES; from++) {
      for (int to = from + 1; to < NODES; to++) {
        if (random.nextInt(3) == 0) {
          arcs.add(new Arc(from, to, 1 + random.nextInt(3), random.nextInt(-9, 10)));
        }
      }
    }
    return arcs;
  }

  private static long theirs(List<Arc> arcs, int units) {
    DirectedWeightedMultigraph<Integer, DefaultWeightedEdge> graph =
        new DirectedWeightedMultigraph<>(DefaultWeightedEdge.class);
    for (int node = 0; node < NODES; node++) {
      graph.addVertex(node);
    }
    List<DefaultWeightedEdge> edges = new ArrayList<>();
    List<Integer> capacities = new ArrayList<>();
    for (Arc arc : arcs) {
      DefaultWeightedEdge edge = graph.addEdge(arc.from(), arc.to());
      graph.setEdgeWeight(edge, arc.price());
      edges.add(edge);
      capacities.add(arc.capacity());
    }
    DefaultWeightedEdge idle = graph.addEdge(0, NODES - 1);
    graph.setEdgeWeight(idle, 0);
    edges.add(idle);
    capacities.add(units);
    double cost =
        new CapacityScalingMinimumCostFlow<Integer, DefaultWeightedEdge>()
            .getMinimumCostFlow(
                new MinimumCostFlowProblemImpl<>(
                    graph,
                    node -> node == 0 ? units : node == NODES - 1 ? -units : 0,
                    edge -> capacities.get(edges.indexOf(edge))))
            .getCost();
    return Math.round(cost);
  }
}
