package entracte.plan;

import java.util.Comparator;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * The least moves for plugging a casting with a limited bag: best-first branch and bound over
 * {@link BagFlow}. Where two cords wait that may not wait at once, one of them is forbidden there.
 * Exact unless cut short, but for lengths, which only {@link CordLengths} looks at.
 */
final class BagProof {
  private final Problem problem;
  private final CordLedger cords;
  private final BagPlaces places;
  private long lowerBound;
  private Optional<Stays> stays = Optional.empty();

  private record Node(boolean[][] forbidden, BagFlow flow) {}

  BagProof(Problem problem, Layout layout, int mostNodes) {
    this.problem = problem;
    cords = layout.cords;
    places = new BagPlaces(cords, problem.rig);
    branch(mostNodes);
  }

  /** No plan of this casting weighs less. */
  long lowerBound() {
    return lowerBound;
  }

  /** The best plugging, if it was found. */
  Optional<Stays> stays() {
    return stays;
  }

  private void branch(int mostNodes) {
    PriorityQueue<Node> open =
        new PriorityQueue<>(Comparator.comparingLong((Node node) -> node.flow().cost()));
    open.add(node(new boolean[places.count()][cords.columns]));
    for (int nodes = 0; nodes < mostNodes && !open.isEmpty(); nodes++) {
      Node best = open.poll();
      lowerBound = best.flow().cost();
      if (lowerBound >= BagRule.EMPTY_BAG) {
        return;
      }
      int[] clash = clash(best.flow());
      if (clash.length == 0) {
        stays = Optional.of(new Stays(cords, places, best.flow()));
        return;
      }
      for (int side = 0; side < 2; side++) {
        boolean[][] forbidden = new boolean[places.count()][];
        for (int place = 0; place < forbidden.length; place++) {
          forbidden[place] = best.forbidden()[place].clone();
        }
        forbidden[clash[side]][clash[2]] = true;
        open.add(node(forbidden));
      }
    }
  }

  private Node node(boolean[][] forbidden) {
    return new Node(forbidden, new BagFlow(problem, cords, places, forbidden));
  }

  /** Two places that hold cords which may not wait at once, and the column; empty if none. */
  private int[] clash(BagFlow flow) {
    for (int column = 1; column < cords.columns; column++) {
      for (int place = 0; place < places.count(); place++) {
        if (!flow.holds(place, column) || places.isRequired(place, column)) {
          continue;
        }
        for (int other = 0; other < places.count(); other++) {
          if (other != place
              && flow.holds(other, column)
              && !places.isRequired(other, column)
              && places.exclude(place, other, column)) {
            return new int[] {place, other, column};
          }
        }
      }
    }
    return new int[0];
  }
}
