package entracte.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Fixes the changeover of every removal and addition so that the moves are the fewest that {@link
 * PlugPaths} promises, and pairs those that share a jack. Where several times are as good, hands
 * move when they must: cords come and go as late as they may.
 */
final class PlugSchedule {
  /** The changeover of each event, by event; 0 where nothing happens. */
  final int[] time;

  /** The event that each event is paired with, or -1. */
  final int[] partner;

  private final CordLedger cords;
  private final PlugPaths paths;

  private PlugSchedule(CordLedger cords, Problem problem) {
    this.cords = cords;
    int events = 2 * cords.columnOf.length;
    time = new int[events];
    partner = new int[events];
    paths = new PlugPaths(cords, problem);
  }

  /**
   * Settles all times. Where two cords would feed one idle multiple, the first is pulled as early
   * as it may be, even at the price of a pair.
   */
  static PlugSchedule of(CordLedger cords, Problem problem) {
    PlugSchedule schedule = new PlugSchedule(cords, problem);
    Feeds feeds = new Feeds(cords, problem.rig);
    boolean[] early = new boolean[schedule.time.length];
    do {
      schedule.settleAll(early);
    } while (feeds.clash(schedule.time, early));
    return schedule;
  }

  private void settleAll(boolean[] early) {
    Arrays.fill(time, 0);
    Arrays.fill(partner, CordLedger.NOTHING);
    for (int event = 0; event < time.length; event++) {
      if (time[event] == 0 && paths.happens(event)) {
        List<Integer> path = new ArrayList<>();
        int length = paths.walk(event);
        for (int i = 0; i < length; i++) {
          path.add(paths.event(i));
        }
        settle(path, early);
        pair(path, paths.isCyclic());
      }
    }
  }

  /** Tries the times of one event after another, latest first, while the cost stays the least. */
  private void settle(List<Integer> path, boolean[] early) {
    for (int event : path) {
      if (early[event]) {
        paths.fix(event, paths.earliest(event));
      }
    }
    long least = paths.cost();
    for (int event : path) {
      for (int t = paths.latest(event); t >= paths.earliest(event); t--) {
        paths.fix(event, t);
        if (paths.cost() == least) {
          time[event] = t;
          break;
        }
        paths.release(event);
      }
      if (time[event] == 0) {
        throw new IllegalStateException("no time for an event that has one");
      }
    }
    path.forEach(paths::release);
  }

  /** Along a path the most pairs come from taking each as soon as it offers itself. */
  private void pair(List<Integer> path, boolean cyclic) {
    int length = path.size();
    int first = cyclic ? seam(path) : 0;
    for (int i = 0; i < length - (cyclic ? 0 : 1); i++) {
      int a = path.get((first + i) % length);
      int b = path.get((first + i + 1) % length);
      if (time[a] == time[b] && partner[a] < 0 && partner[b] < 0) {
        partner[a] = b;
        partner[b] = a;
      }
    }
  }

  /** Where on a cycle to start, so that no run of equal times is cut in two. */
  private int seam(List<Integer> cycle) {
    for (int i = 1; i < cycle.size(); i++) {
      if (time[cycle.get(i)] != time[cycle.get(i - 1)]) {
        return i;
      }
    }
    return 0;
  }
}
