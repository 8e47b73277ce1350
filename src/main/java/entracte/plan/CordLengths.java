package entracte.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;

/**
 * Takes a cord from the stock for every stay: long enough, the same for a stay and the one it
 * shifts to, and never more of a length than there are. Depth-first over the cords' lives, those
 * that need most first, shortest length first. With one length this is exact and linear; with
 * several it gives up after a fixed number of tries.
 */
final class CordLengths {
  private static final int MOST_TRIES = 200_000;

  private final Problem problem;
  private final Stays stays;
  private final List<Life> lives = new ArrayList<>();
  private final int[] lengths;

  /** How many there are of each length. */
  private final int[] counts;

  private final int[][] plugged;
  private int tries;

  /** What one cord does: its stays in order, the least length, and one already known or -1. */
  private record Life(List<Integer> stays, int from, int to, int need, int known) {}

  private CordLengths(Problem problem, CordLedger cords, Stays stays) {
    this.problem = problem;
    this.stays = stays;
    NavigableMap<Integer, Integer> stock = problem.rig.rig.cords().countByLengthCm();
    lengths = stock.keySet().stream().mapToInt(Integer::intValue).toArray();
    counts = stock.values().stream().mapToInt(Integer::intValue).toArray();
    plugged = new int[lengths.length][cords.columns];
    boolean[] continued = new boolean[stays.all.size()];
    for (int next : stays.shiftsTo) {
      if (next >= 0) {
        continued[next] = true;
      }
    }
    for (int stay = 0; stay < continued.length; stay++) {
      if (!continued[stay]) {
        lives.add(life(cords, stay));
      }
    }
    lives.sort(Comparator.comparingInt(Life::need).reversed().thenComparingInt(Life::from));
  }

  private Life life(CordLedger cords, int first) {
    List<Integer> members = new ArrayList<>();
    int need = 0;
    int last = first;
    for (int stay = first; stay >= 0; stay = stays.shiftsTo[stay]) {
      members.add(stay);
      last = stay;
      int use = stays.all.get(stay).uses().get(0);
      int a = problem.rig.moduleOfSocket[cords.sourceOf[use]];
      int b = problem.rig.moduleOfSocket[cords.sinkOf[use]];
      need = Math.max(need, problem.lengthNeeded[a][b]);
    }
    int use = stays.all.get(first).uses().get(0);
    int known = cords.columnOf[use] == 0 ? problem.start.state().lengthCm().get(use) : -1;
    return new Life(members, stays.all.get(first).from(), stays.all.get(last).to(), need, known);
  }

  /** The length of each stay; empty if the stock does not suffice, or the search gave up. */
  static Optional<int[]> find(Problem problem, CordLedger cords, Stays stays) {
    CordLengths search = new CordLengths(problem, cords, stays);
    int[] chosen = new int[search.lives.size()];
    if (!search.mayDo() || !search.choose(0, chosen)) {
      return Optional.empty();
    }
    int[] byStay = new int[stays.all.size()];
    for (int i = 0; i < chosen.length; i++) {
      for (int stay : search.lives.get(i).stays()) {
        byStay[stay] = search.lengths[chosen[i]];
      }
    }
    return Optional.of(byStay);
  }

  /** Whether there are enough in every column, each length taken with all greater ones. */
  private boolean mayDo() {
    int[] inUse = new int[plugged[0].length];
    int longEnough = 0;
    for (int length = lengths.length - 1; length >= 0; length--) {
      longEnough += counts[length];
      for (Life life : lives) {
        for (int t = life.from(); t <= life.to() && life.need() == lengths[length]; t++) {
          if (++inUse[t] > longEnough) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private boolean choose(int at, int[] chosen) {
    if (at == lives.size()) {
      return true;
    }
    Life life = lives.get(at);
    for (int length = 0; length < lengths.length && tries < MOST_TRIES; length++) {
      if (suits(life, length) && isFree(life, length)) {
        tries++;
        change(life, length, 1);
        chosen[at] = length;
        if (choose(at + 1, chosen)) {
          return true;
        }
        change(life, length, -1);
      }
    }
    return false;
  }

  private boolean suits(Life life, int length) {
    return life.known() >= 0
        ? life.known() == lengths[length] && life.need() <= lengths[length]
        : life.need() <= lengths[length];
  }

  private boolean isFree(Life life, int length) {
    for (int t = life.from(); t <= life.to(); t++) {
      if (plugged[length][t] >= counts[length]) {
        return false;
      }
    }
    return true;
  }

  private void change(Life life, int length, int by) {
    for (int t = life.from(); t <= life.to(); t++) {
      plugged[length][t] += by;
    }
  }
}
