package entracte.plan;

/**
 * The least moves for plugging, given the windows of {@link CordLedger}; exact while the stock of
 * cords is loose.
 *
 * <p>Each removal and each addition is an <em>event</em> and costs two moves (or their time: see
 * {@link Prices}). Two events of one changeover that share a jack are a pair, one cord of which
 * only one plug moves, and save two. A removal can pair, at each of its two jacks, only with the
 * addition of that jack's next cord: any later one finds the jack taken in between. So the events,
 * joined where their windows meet, form paths and cycles, and along each of them the best choice of
 * times and pairs is found by dynamic programming over (time, paired with the event before). A
 * removal must not come after the addition of the next cord in its jack; where the windows do not
 * meet this holds by itself. Taking pairs without regard to that order would count too few moves:
 * see {@code PlannerOnKnownSetsTest}.
 *
 * <p>Time: O(events times the width of their windows).
 */
final class PlugPaths {
  private static final long NEVER = Long.MAX_VALUE / 4;
  private final CordLedger cords;
  private final Weights weights;
  private final Prices prices;

  /** The events of the path found last, from {@link #begin} on. */
  private final int[] path;

  /** The socket that an event of the path shares with the one before. */
  private final int[] joint;

  /** The first and the last time of each event of the path. */
  private final int[] low;

  private final int[] high;

  private final int middle;
  private int begin;
  private int length;
  private boolean cyclic;
  private long[] apart;
  private long[] paired;
  private long[] nextApart;
  private long[] nextPaired;

  /** The time an event is held at, or 0. */
  private final int[] fixed;

  PlugPaths(CordLedger cords, Problem problem) {
    this.cords = cords;
    weights = problem.weights;
    prices = problem.prices;
    middle = 2 * cords.columnOf.length;
    path = new int[2 * middle];
    joint = new int[path.length + 1];
    fixed = new int[middle];
    low = new int[middle];
    high = new int[middle];
    apart = new long[cords.columns + 1];
    paired = new long[cords.columns + 1];
    nextApart = new long[cords.columns + 1];
    nextPaired = new long[cords.columns + 1];
  }

  /** The event that adds the cord of a use. */
  static int addition(int use) {
    return 2 * use + 1;
  }

  /** The event that removes the cord of a use. */
  static int removal(int use) {
    return 2 * use;
  }

  static boolean isAddition(int event) {
    return (event & 1) != 0;
  }

  static int useOf(int event) {
    return event >> 1;
  }

  boolean happens(int event) {
    int use = useOf(event);
    return cords.sourceOf[use] != CordLedger.NOTHING
        && (isAddition(event) ? cords.addFrom[use] : cords.removeTo[use]) != 0;
  }

  /** Holds an event at a time until {@link #release}; a path once found stays as it is. */
  void fix(int event, int t) {
    fixed[event] = t;
  }

  void release(int event) {
    fixed[event] = 0;
  }

  int earliest(int event) {
    if (fixed[event] != 0) {
      return fixed[event];
    }
    int use = useOf(event);
    return isAddition(event) ? cords.addFrom[use] : cords.columnOf[use] + 1;
  }

  int latest(int event) {
    if (fixed[event] != 0) {
      return fixed[event];
    }
    int use = useOf(event);
    return isAddition(event) ? cords.columnOf[use] : cords.removeTo[use];
  }

  /** What may follow a removal or go before an addition in a jack, or -1. */
  int neighbour(int event, int socket) {
    int column = cords.columnOf[useOf(event)];
    if (isAddition(event)) {
      int before = cords.previousUse(socket, column);
      return before == CordLedger.NOTHING ? before : removal(before);
    }
    int after = cords.nextUse(socket, column);
    return after == CordLedger.NOTHING ? after : addition(after);
  }

  /** The event that could pair with {@code event} at {@code socket}, or -1. */
  int partner(int event, int socket) {
    int other = neighbour(event, socket);
    if (other == CordLedger.NOTHING) {
      return other;
    }
    boolean adds = isAddition(event);
    int from = cords.addFrom[useOf(adds ? event : other)];
    boolean meets = from != 0 && from <= cords.removeTo[useOf(adds ? other : event)];
    return meets ? other : CordLedger.NOTHING;
  }

  /** Finds the path or cycle that {@code event} belongs to; read it with {@link #event}. */
  int walk(int event) {
    begin = middle;
    int end = middle;
    path[middle] = event;
    joint[middle] = cords.sourceOf[useOf(event)];
    int next = partner(event, joint[middle]);
    while (next >= 0 && next != event) {
      joint[begin - 1] = otherSocket(next, joint[begin]);
      path[--begin] = next;
      next = partner(next, joint[begin]);
    }
    cyclic = next == event;
    joint[end + 1] = cords.sinkOf[useOf(event)];
    next = cyclic ? CordLedger.NOTHING : partner(event, joint[end + 1]);
    while (next >= 0) {
      path[++end] = next;
      joint[end + 1] = otherSocket(next, joint[end]);
      next = partner(next, joint[end + 1]);
    }
    length = end + 1 - begin;
    return length;
  }

  private int otherSocket(int event, int socket) {
    int use = useOf(event);
    return cords.sourceOf[use] == socket ? cords.sinkOf[use] : cords.sourceOf[use];
  }

  int event(int place) {
    return path[begin + place];
  }

  /** The socket before event {@code place} of the path, or after the last. */
  int joint(int place) {
    return joint[begin + place];
  }

  boolean isCyclic() {
    return cyclic;
  }

  /** The additions on the path found last that cannot be made before the first changeover. */
  int lateAdditions() {
    int late = 0;
    for (int i = 0; i < length; i++) {
      late += isAddition(event(i)) && earliest(event(i)) > weights.setUpColumn() ? 1 : 0;
    }
    return late;
  }

  /** The weight of the moves on the path found last. */
  long cost() {
    measure();
    if (cyclic) {
      return cycleCost();
    }
    if (length == 1) {
      return price(event(0)) * weights.least(low[0], high[0]);
    }
    if (length == 2 && weights.areEven() && isAfterSetUp(0) && isAfterSetUp(1)) {
      return (price(event(0)) + price(event(1)) - prices.stay(joint(1))) * Weights.CHANGEOVER;
    }
    return pathCost();
  }

  private void measure() {
    for (int i = 0; i < length; i++) {
      low[i] = earliest(event(i));
      high[i] = latest(event(i));
    }
  }

  private int price(int event) {
    int use = useOf(event);
    return isAddition(event)
        ? prices.add(cords.sourceOf[use], cords.sinkOf[use])
        : prices.remove(cords.sourceOf[use], cords.sinkOf[use]);
  }

  private boolean isAfterSetUp(int i) {
    return low[i] > weights.setUpColumn() && fixed[event(i)] == 0;
  }

  private long pathCost() {
    int price = price(event(0));
    for (int t = low[0]; t <= high[0]; t++) {
      apart[t] = price * weights.at(t);
      paired[t] = NEVER;
    }
    extend();
    long least = NEVER;
    for (int t = low[length - 1]; t <= high[length - 1]; t++) {
      least = Math.min(least, Math.min(apart[t], paired[t]));
    }
    return least;
  }

  /** From the times of the first event to those of the last. */
  private void extend() {
    for (int i = 1; i < length; i++) {
      int earlier = low[i - 1];
      int later = high[i - 1];
      if (isAddition(event(i))) {
        extend(i, 1, earlier, later + 1, low[i], high[i] + 1);
      } else {
        extend(i, -1, later, earlier - 1, high[i], low[i] - 1);
      }
    }
  }

  /**
   * From the times of one event to those of the next: an addition comes with the event before or
   * later, a removal with it or earlier.
   */
  private void extend(int i, int way, int scanFrom, int scanTo, int from, int to) {
    int price = price(event(i));
    int saved = prices.stay(joint(i));
    long best = NEVER;
    int scan = scanFrom;
    for (int t = from; t != to; t += way) {
      for (; scan != scanTo && (t - scan) * way >= 0; scan += way) {
        best = Math.min(best, Math.min(apart[scan], paired[scan]));
      }
      boolean together = low[i - 1] <= t && t <= high[i - 1];
      long weight = weights.at(t);
      nextApart[t] = best >= NEVER ? NEVER : best + price * weight;
      nextPaired[t] = together ? apart[t] + (price - saved) * weight : NEVER;
    }
    swap();
  }

  private void swap() {
    long[] keep = apart;
    apart = nextApart;
    nextApart = keep;
    keep = paired;
    paired = nextPaired;
    nextPaired = keep;
  }

  /** Tries every time of the first event, paired across the seam or not. */
  private long cycleCost() {
    long least = NEVER;
    for (int start = low[0]; start <= high[0]; start++) {
      for (int seam = 0; seam <= 1; seam++) {
        openAt(start, seam == 1);
        extend();
        least = Math.min(least, close(start, seam == 1));
      }
    }
    return least;
  }

  private void openAt(int start, boolean seam) {
    for (int t = low[0]; t <= high[0]; t++) {
      apart[t] = NEVER;
      paired[t] = NEVER;
    }
    int price = price(event(0));
    if (seam) {
      paired[start] = (price - prices.stay(joint(0))) * weights.at(start);
    } else {
      apart[start] = price * weights.at(start);
    }
  }

  private long close(int start, boolean seam) {
    long least = NEVER;
    boolean adds = isAddition(event(length - 1));
    for (int t = low[length - 1]; t <= high[length - 1]; t++) {
      if (seam) {
        if (t == start && apart[t] < NEVER) {
          least = Math.min(least, apart[t]);
        }
      } else if (adds ? t >= start : t <= start) {
        least = Math.min(least, Math.min(apart[t], paired[t]));
      }
    }
    return least;
  }
}
