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
  private final int[] path;

  /** The socket that an event of the path shares with the one before. */
  private final int[] joint;

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
    path = new int[2 * cords.columnOf.length];
    joint = new int[path.length + 1];
    fixed = new int[path.length];
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

  /** The event that could pair with {@code event} at {@code socket}, or -1. */
  int partner(int event, int socket) {
    int use = useOf(event);
    if (isAddition(event)) {
      int before = cords.previousUse(socket, cords.columnOf[use]);
      boolean meets = before != CordLedger.NOTHING && cords.removeTo[before] >= cords.addFrom[use];
      return meets ? removal(before) : CordLedger.NOTHING;
    }
    int after = cords.nextUse(socket, cords.columnOf[use]);
    boolean meets =
        after != CordLedger.NOTHING
            && cords.addFrom[after] != 0
            && cords.addFrom[after] <= cords.removeTo[use];
    return meets ? addition(after) : CordLedger.NOTHING;
  }

  /** Finds the path or cycle that {@code event} belongs to; read it with {@link #event}. */
  int walk(int event) {
    int use = useOf(event);
    int socket = cords.sourceOf[use];
    int first = event;
    cyclic = false;
    for (int next = partner(first, socket); next >= 0; next = partner(first, socket)) {
      if (next == event) {
        cyclic = true;
        break;
      }
      first = next;
      socket = otherSocket(first, socket);
    }
    if (cyclic) {
      follow(event, cords.sourceOf[use], event);
    } else {
      follow(first, otherSocket(first, socket), CordLedger.NOTHING);
    }
    return length;
  }

  /** Follows the path from {@code event} on, leaving through {@code socket}. */
  private void follow(int event, int socket, int stop) {
    length = 0;
    int current = event;
    int leaving = socket;
    joint[0] = otherSocket(event, socket);
    do {
      path[length++] = current;
      joint[length] = leaving;
      current = partner(current, leaving);
      if (current >= 0) {
        leaving = otherSocket(current, leaving);
      }
    } while (current != stop && current >= 0);
  }

  private int otherSocket(int event, int socket) {
    int use = useOf(event);
    return cords.sourceOf[use] == socket ? cords.sinkOf[use] : cords.sourceOf[use];
  }

  int event(int place) {
    return path[place];
  }

  /** The socket before event {@code place} of the path, or after the last. */
  int joint(int place) {
    return joint[place];
  }

  boolean isCyclic() {
    return cyclic;
  }

  /** The additions on the path found last that cannot be made before the first changeover. */
  int lateAdditions() {
    int late = 0;
    for (int i = 0; i < length; i++) {
      late += isAddition(path[i]) && earliest(path[i]) > weights.setUpColumn() ? 1 : 0;
    }
    return late;
  }

  /** The weight of the moves on the path found last. */
  long cost() {
    if (cyclic) {
      return cycleCost();
    }
    if (length == 1) {
      return single(path[0]);
    }
    if (length == 2 && weights.areEven() && isAfterSetUp(path[0]) && isAfterSetUp(path[1])) {
      return (price(path[0]) + price(path[1]) - prices.stay(joint[1])) * Weights.CHANGEOVER;
    }
    open(path[0]);
    for (int i = 1; i < length; i++) {
      extend(i);
    }
    return Math.min(least(apart, path[length - 1]), least(paired, path[length - 1]));
  }

  private int price(int event) {
    int use = useOf(event);
    return isAddition(event)
        ? prices.add(cords.sourceOf[use], cords.sinkOf[use])
        : prices.remove(cords.sourceOf[use], cords.sinkOf[use]);
  }

  private boolean isAfterSetUp(int event) {
    return earliest(event) > weights.setUpColumn() && fixed[event] == 0;
  }

  private long single(int event) {
    return price(event) * weights.least(earliest(event), latest(event));
  }

  private void open(int event) {
    for (int t = earliest(event); t <= latest(event); t++) {
      apart[t] = price(event) * weights.at(t);
      paired[t] = NEVER;
    }
  }

  private long least(long[] costs, int event) {
    long least = NEVER;
    for (int t = earliest(event); t <= latest(event); t++) {
      least = Math.min(least, costs[t]);
    }
    return least;
  }

  private void extend(int i) {
    int before = path[i - 1];
    int event = path[i];
    int price = price(event);
    int saved = prices.stay(joint[i]);
    int from = earliest(before);
    int to = latest(before);
    int low = earliest(event);
    int high = latest(event);
    boolean later = isAddition(event);
    long best = NEVER;
    int scan = later ? from : to;
    for (int step = 0; step <= high - low; step++) {
      int t = later ? low + step : high - step;
      while (later ? scan <= Math.min(t, to) : scan >= Math.max(t, from)) {
        best = Math.min(best, Math.min(apart[scan], paired[scan]));
        scan += later ? 1 : -1;
      }
      nextApart[t] = best >= NEVER ? NEVER : best + price * weights.at(t);
      nextPaired[t] = from <= t && t <= to ? apart[t] + (price - saved) * weights.at(t) : NEVER;
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
    int first = path[0];
    int last = path[length - 1];
    for (int start = earliest(first); start <= latest(first); start++) {
      for (int seam = 0; seam <= 1; seam++) {
        openAt(first, start, seam == 1);
        for (int i = 1; i < length; i++) {
          extend(i);
        }
        least = Math.min(least, close(last, start, seam == 1));
      }
    }
    return least;
  }

  private void openAt(int event, int start, boolean seam) {
    for (int t = earliest(event); t <= latest(event); t++) {
      apart[t] = NEVER;
      paired[t] = NEVER;
    }
    if (seam) {
      paired[start] = (price(event) - prices.stay(joint[0])) * weights.at(start);
    } else {
      apart[start] = price(event) * weights.at(start);
    }
  }

  private long close(int last, int start, boolean seam) {
    long least = NEVER;
    for (int t = earliest(last); t <= latest(last); t++) {
      if (seam) {
        if (t == start && apart[t] < NEVER) {
          least = Math.min(least, apart[t]);
        }
      } else if (isAddition(last) ? t >= start : t <= start) {
        least = Math.min(least, Math.min(apart[t], paired[t]));
      }
    }
    return least;
  }
}
