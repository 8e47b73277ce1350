package entracte.plan;

import entracte.rig.CordStock;
import java.util.stream.IntStream;

/**
 * Plays a casting through with a bag that may run empty: cords come when they are needed, and as
 * many as the bag allows before the show; when one is missing, the parked cord goes that is needed
 * furthest in the future (keep tool needed soonest: Tang and Denardo, Operations Research 36, 1988;
 * for memory pages Belady 1966). A cord put in before the show that would have to go before its
 * first use was never put in.
 *
 * <p>What comes out can be played; it is an upper bound on the least moves. Time: songs times cords
 * plugged.
 */
final class BagRule {
  static final int NONE = -1;

  private final Problem problem;
  private final CordLedger cords;
  private final Bag bag;
  private final BagPairing pairing;

  /** The cords plugged now, as stays. */
  private final int[] plugged;

  private int pluggedCount;
  final BagStays stays;

  BagRule(Problem problem, CordLedger cords) {
    this.problem = problem;
    this.cords = cords;
    CordStock stock = problem.rig.rig.cords();
    bag = new Bag(stock);
    stays = new BagStays(cords);
    pairing = new BagPairing(problem, cords, stays, bag);
    plugged = new int[2 * cords.columnOf.length + 1];
  }

  /** Plays all changeovers; false if a song finds no cord for what it needs. */
  boolean play(int[] firstUse) {
    begin(firstUse[1]);
    for (int column = 1; column < cords.columns; column++) {
      pairing.begin();
      takeAway(column);
      callFor(firstUse[column], firstUse[column + 1]);
      if (!makeRoom(column)) {
        return false;
      }
      pairing.pair();
      for (int c = 0; c < pairing.coming(); c++) {
        plugged[pluggedCount++] = pairing.plug(c, column);
      }
      if (column == 1) {
        prefill(firstUse);
      }
    }
    return true;
  }

  /** The length in cm of each stay that counts, in order. */
  int[] lengthsOf() {
    return IntStream.range(0, stays.count())
        .filter(stays::counts)
        .map(stay -> bag.cm(stays.length(stay)))
        .toArray();
  }

  private void begin(int startCords) {
    bag.refill();
    stays.clear();
    pluggedCount = 0;
    for (int u = 0; u < startCords; u++) {
      int length = bag.indexOf(problem.start.state().lengthCm().get(u));
      bag.take(length);
      plugged[pluggedCount++] = stays.open(u, 0, length, NONE);
    }
  }

  /** Pulls every cord that may not be there in {@code column}. */
  private void takeAway(int column) {
    for (int i = pluggedCount - 1; i >= 0; i--) {
      if (!mayStay(stays.lastUse(plugged[i]), column)) {
        pull(i, column);
      }
    }
  }

  private boolean mayStay(int use, int column) {
    int atSource = cords.use(cords.sourceOf[use], column);
    int atSink = cords.use(cords.sinkOf[use], column);
    if (atSource >= 0 || atSink >= 0) {
      return atSource == atSink;
    }
    return cords.mayWait(cords.sinkOf[use], column);
  }

  private void pull(int i, int column) {
    int stay = plugged[i];
    plugged[i] = plugged[--pluggedCount];
    bag.giveBack(stays.length(stay));
    if (stays.isUnused(stay)) {
      stays.forget(stay);
    } else {
      stays.close(stay, column - 1);
      pairing.goes(stay);
    }
  }

  /** Lists the uses of a column whose cord is not there yet; the others are served. */
  private void callFor(int from, int to) {
    for (int use = from; use < to; use++) {
      if (cords.sourceOf[use] != CordLedger.NOTHING) {
        int there = find(use);
        if (there >= 0) {
          stays.serve(plugged[there], use);
        } else {
          pairing.comes(use);
        }
      }
    }
  }

  private int find(int use) {
    for (int i = 0; i < pluggedCount; i++) {
      if (cords.sameJacks(stays.lastUse(plugged[i]), use)) {
        return i;
      }
    }
    return NONE;
  }

  /** Pulls parked cords until the bag has one for every comer. */
  private boolean makeRoom(int column) {
    for (int lack = pairing.lack(); lack >= 0; lack = pairing.lack()) {
      int victim = furthest(column, lack);
      if (victim < 0) {
        return false;
      }
      pull(victim, column);
    }
    return true;
  }

  /** The parked cord at least so long that is needed last, or never; those that can pair first. */
  private int furthest(int column, int length) {
    int best = NONE;
    long bestKey = -1;
    for (int i = 0; i < pluggedCount; i++) {
      int use = stays.lastUse(plugged[i]);
      if (cords.use(cords.sourceOf[use], column) < 0 && stays.length(plugged[i]) >= length) {
        long key = 2L * nextUse(use, column) + (pairing.sharesJack(use) ? 1 : 0);
        if (key > bestKey) {
          bestKey = key;
          best = i;
        }
      }
    }
    return best;
  }

  /** The column in which the cord of {@code use} is needed again if it waits till then. */
  private int nextUse(int use, int column) {
    int source = cords.sourceOf[use];
    return cords.goesOn(source, cords.sinkOf[use], column)
        ? cords.columnOf[cords.nextUse(source, column)]
        : cords.columns;
  }

  /** Puts in before the show what will be needed first. */
  private void prefill(int[] firstUse) {
    if (!problem.parking || problem.weights.setUpColumn() != 1) {
      return;
    }
    for (int column = 2; column < cords.columns; column++) {
      for (int use = firstUse[column]; use < firstUse[column + 1]; use++) {
        if (cords.sourceOf[use] != CordLedger.NOTHING && waitsFromSetUp(use, column)) {
          int length = bag.shortest(pairing.need(use));
          if (length >= 0) {
            bag.take(length);
            plugged[pluggedCount++] = stays.openEarly(use, 1, length);
          }
        }
      }
    }
  }

  private boolean waitsFromSetUp(int use, int column) {
    return cords.previousUse(cords.sourceOf[use], column) < 0
        && cords.previousUse(cords.sinkOf[use], column) < 0
        && cords.previousBlocked(cords.sinkOf[use], column) < 1;
  }
}
