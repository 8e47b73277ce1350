package entracte.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * The least moves for plugging a casting with a limited bag: best-first branch and bound over
 * {@link BagFlow}. Where two cords wait that may not wait at once, or more cords are in use than
 * there are so long ones, one of them is forbidden to wait there, or to move on to where it must be
 * so long. Exact unless cut short, but for what only {@link CordLengths} can tell: whether each can
 * have one length all the time. Who wants a plugging in any case lets it dive after so many flows:
 * it then only follows the cheapest way down, for some plugging rather than the best.
 */
final class BagProof {
  private final Problem problem;
  private final CordLedger cords;
  private final BagPlaces places;
  private long lowerBound;
  private Optional<Stays> stays = Optional.empty();

  private record Node(int bans, BagFlow flow) {}

  /**
   * Looks for a plugging.
   *
   * @param flows how many flows to try; where none of them will do, as many as {@code most} are
   *     tried in a dive
   * @param enough a weight that need not be reached: the search stops once it is sure to be
   */
  BagProof(Problem problem, Layout layout, int flows, int most, long enough) {
    this.problem = problem;
    cords = layout.cords;
    places = new BagPlaces(cords, problem.rig);
    branch(flows, most, Math.min(enough, BagFlow.EMPTY_BAG));
  }

  /** No plan of this casting weighs less. */
  long lowerBound() {
    return lowerBound;
  }

  /** A plugging, if one was found; the best, if it weighs no more than the bound. */
  Optional<Stays> stays() {
    return stays;
  }

  private void branch(int flows, int most, long enough) {
    Comparator<Node> leastFirst = Comparator.comparingLong(node -> node.flow().cost());
    Comparator<Node> deepFirst = Comparator.comparingInt(node -> -node.bans());
    PriorityQueue<Node> open = new PriorityQueue<>(leastFirst.thenComparing(deepFirst));
    open.add(new Node(0, new BagFlow(problem, cords, places)));
    int nodes = 1;
    boolean dives = false;
    while (!open.isEmpty()) {
      Node best = open.poll();
      long cost = best.flow().cost();
      lowerBound = dives ? lowerBound : cost;
      if (cost >= enough || nodes > most) {
        return;
      }
      Optional<List<BagBan>> clash = clash(best.flow());
      if (clash.isEmpty()) {
        stays = Optional.of(new Stays(cords, places, best.flow()));
        return;
      }
      dives = nodes > flows;
      if (dives) {
        open.clear();
      }
      for (BagBan ban : clash.get()) {
        open.add(new Node(best.bans() + 1, best.flow().without(ban)));
        nodes++;
      }
    }
    lowerBound = dives ? lowerBound : BagFlow.EMPTY_BAG;
  }

  /** Bans of which one must hold, perhaps none; empty if nothing is wrong with the flow. */
  private Optional<List<BagBan>> clash(BagFlow flow) {
    BagLives lives = new BagLives(problem, cords, flow, places);
    for (int column = 1; column < cords.columns; column++) {
      Optional<List<BagBan>> excluded = excluded(flow, column);
      Optional<List<BagBan>> clash = excluded.isPresent() ? excluded : lengths(lives, column);
      if (clash.isPresent()) {
        return clash;
      }
    }
    return Optional.empty();
  }

  /** Two cords that may not wait at once. */
  private Optional<List<BagBan>> excluded(BagFlow flow, int column) {
    List<Integer> waiting = waiting(flow, column);
    for (int i = 0; i < waiting.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (places.exclude(waiting.get(j), waiting.get(i), column)) {
          return Optional.of(
              List.of(BagBan.from(waiting.get(j), column), BagBan.from(waiting.get(i), column)));
        }
      }
    }
    return Optional.empty();
  }

  private List<Integer> waiting(BagFlow flow, int column) {
    List<Integer> waiting = new ArrayList<>();
    for (int place = 0; place < places.count(); place++) {
      if (flow.holds(place, column) && !places.isRequired(place, column)) {
        waiting.add(place);
      }
    }
    return waiting;
  }

  /** A cord that is too short for where it goes, or more that are so long than there are. */
  private Optional<List<BagBan>> lengths(BagLives lives, int column) {
    for (int place = 0; place < places.count(); place++) {
      if (lives.isTooShort(place, column)) {
        return Optional.of(lives.sinceStart(place, column));
      }
    }
    int longEnough = 0;
    for (Map.Entry<Integer, Integer> stock :
        problem.rig.rig.cords().countByLengthCm().descendingMap().entrySet()) {
      longEnough += stock.getValue();
      int inUse = 0;
      List<BagBan> bans = new ArrayList<>();
      for (int place = 0; place < places.count(); place++) {
        if (lives.needs(place, column, stock.getKey())) {
          inUse++;
          bans.addAll(lives.against(place, column, stock.getKey()));
        }
      }
      if (inUse > longEnough) {
        return Optional.of(bans);
      }
    }
    return Optional.empty();
  }
}
