package entracte.plan;

import java.util.Arrays;
import java.util.Optional;

/**
 * What the plugging costs, path by path, while the stock of cords is loose. Each path of events
 * (see {@link PlugPaths}) keeps its cost; a change gives up the paths that it can reach and looks
 * for those that stand in their place.
 *
 * <p>A change is made in steps: {@link #begin}; {@link #touch} and {@link #touchSocket} tell what
 * it reaches, as things stand before it; {@link #leave}; then the change itself, and {@link
 * #enter}. At last {@link #accept} or, the change being taken back, {@link #undo}.
 *
 * <p>A path changes only by events whose windows or neighbours change; and what an event leaves or
 * joins are its neighbours. So it will do to look at the events touched, and at the neighbours that
 * they have before the change.
 */
final class PathLedger {
  private static final int MOVES_TO_ADD = 2;

  private final CordLedger cords;
  private final PlugPaths paths;

  /** What is told of cords that come to wait longer or less long. */
  private final Optional<Shortage> shortage;

  /** One event of the path on which an event lies. */
  private final int[] pathOf;

  /** The cost of a path, and what its additions alone must take, by that event. */
  private final long[] costOf;

  private final int[] addingOf;
  private final int[] seen;
  private int round;
  private final IntBag touched;
  private final IntBag reached;

  /** Where the windows of the events touched ended before. */
  private int[] oldWindow = new int[64];

  /** The events of the paths found last, one path after another, and how many each has. */
  private int[] found = new int[64];

  private int[] lengths = new int[64];
  private long[] costs = new long[64];
  private int[] additions = new int[64];
  private int foundEvents;
  private int foundPaths;
  private long cost;
  private int adding;
  private long oldCost;
  private int oldAdding;

  PathLedger(Problem problem, CordLedger cords, Optional<Shortage> shortage) {
    this.cords = cords;
    this.shortage = shortage;
    paths = new PlugPaths(cords, problem);
    int events = 2 * cords.columnOf.length;
    pathOf = new int[events];
    costOf = new long[events];
    addingOf = new int[events];
    seen = new int[events];
    touched = new IntBag(events);
    reached = new IntBag(events);
    for (int use = 0; use < cords.columnOf.length; use++) {
      touch(use);
    }
    enter();
    accept();
  }

  /** The weight of all plugging. */
  long cost() {
    return cost;
  }

  /** The moves that the additions alone must take. */
  int adding() {
    return adding;
  }

  void begin() {
    touched.clear();
    reached.clear();
    shortage.ifPresent(Shortage::begin);
    oldCost = cost;
    oldAdding = adding;
  }

  /** Touches a cord that comes or goes. */
  void touch(int use) {
    touched.add(PlugPaths.removal(use));
    touched.add(PlugPaths.addition(use));
  }

  /** Touches a jack that gets or loses a cord, or in which cords may wait otherwise than so far. */
  void touchSocket(int socket, int column) {
    if (socket == CordLedger.NOTHING) {
      return;
    }
    int before = cords.previousUse(socket, column);
    if (before != CordLedger.NOTHING) {
      touched.add(PlugPaths.removal(before));
    }
    int after = cords.nextUse(socket, column);
    if (after != CordLedger.NOTHING) {
      touched.add(PlugPaths.addition(after));
    }
  }

  /** Gives up the paths that the change reaches. */
  void leave() {
    round++;
    keepWindows();
    leaveWaiting();
    for (int i = 0; i < touched.size(); i++) {
      int event = touched.get(i);
      leave(event);
      int use = PlugPaths.useOf(event);
      if (cords.sourceOf[use] != CordLedger.NOTHING) {
        leaveNeighbour(event, cords.sourceOf[use]);
        leaveNeighbour(event, cords.sinkOf[use]);
      }
    }
  }

  private void leaveWaiting() {
    for (int i = 0; i < touched.size() && shortage.isPresent(); i++) {
      shortage.get().leave(touched.get(i));
    }
  }

  private void leaveNeighbour(int event, int socket) {
    int neighbour = paths.neighbour(event, socket);
    if (neighbour != CordLedger.NOTHING) {
      leave(neighbour);
    }
  }

  private void leave(int event) {
    reached.add(event);
    int path = pathOf[event];
    if (paths.happens(event) && seen[path] != round) {
      seen[path] = round;
      cost -= costOf[path];
      adding -= addingOf[path];
    }
  }

  /** Finds the paths that are there now. */
  void enter() {
    for (int i = 0; i < touched.size(); i++) {
      int use = PlugPaths.useOf(touched.get(i));
      if (cords.sourceOf[use] != CordLedger.NOTHING) {
        cords.findWindow(use, PlugPaths.isAddition(touched.get(i)));
      }
      reached.add(touched.get(i));
    }
    enterWaiting();
    round++;
    foundEvents = 0;
    foundPaths = 0;
    for (int i = 0; i < reached.size(); i++) {
      int event = reached.get(i);
      if (seen[event] != round && paths.happens(event)) {
        find(event);
      }
    }
  }

  /** How long a cord waits is known once all windows are. */
  private void enterWaiting() {
    for (int i = 0; i < touched.size() && shortage.isPresent(); i++) {
      shortage.get().enter(touched.get(i));
    }
  }

  private void find(int event) {
    int length = paths.walk(event);
    makeRoom(length);
    for (int i = 0; i < length; i++) {
      seen[paths.event(i)] = round;
      found[foundEvents++] = paths.event(i);
    }
    lengths[foundPaths] = length;
    additions[foundPaths] = MOVES_TO_ADD * paths.lateAdditions();
    costs[foundPaths] = paths.cost();
    adding += additions[foundPaths];
    cost += costs[foundPaths++];
  }

  private void makeRoom(int length) {
    if (foundEvents + length > found.length) {
      found = Arrays.copyOf(found, 2 * (foundEvents + length));
    }
    if (foundPaths == lengths.length) {
      lengths = Arrays.copyOf(lengths, 2 * foundPaths);
      additions = Arrays.copyOf(additions, 2 * foundPaths);
      costs = Arrays.copyOf(costs, 2 * foundPaths);
    }
  }

  void accept() {
    int place = 0;
    for (int p = 0; p < foundPaths; p++) {
      int path = found[place];
      costOf[path] = costs[p];
      addingOf[path] = additions[p];
      for (int end = place + lengths[p]; place < end; place++) {
        pathOf[found[place]] = path;
      }
    }
  }

  void undo() {
    shortage.ifPresent(Shortage::undo);
    for (int i = 0; i < touched.size(); i++) {
      cords.setWindow(
          PlugPaths.useOf(touched.get(i)), PlugPaths.isAddition(touched.get(i)), oldWindow[i]);
    }
    cost = oldCost;
    adding = oldAdding;
  }

  private void keepWindows() {
    if (oldWindow.length < touched.size()) {
      oldWindow = new int[2 * touched.size()];
    }
    for (int i = 0; i < touched.size(); i++) {
      oldWindow[i] =
          cords.window(PlugPaths.useOf(touched.get(i)), PlugPaths.isAddition(touched.get(i)));
    }
  }
}
