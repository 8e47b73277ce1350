package entracte.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * When to turn a control if moves weigh more in some changeovers than in others. The songs that
 * want it are cut into runs with a common position; a run's turn may come in any changeover from
 * the last song of the run before to its own first song. The cheapest cut is found by dynamic
 * programming from the last song back, in time quadratic in the songs that want the control.
 */
final class TurnTimes {
  private final ControlLedger controls;
  private final Weights weights;

  /** A turn at {@code column} to what the songs want from {@code first} up to {@code end}. */
  record Turn(int column, int first, int end) {}

  /** The best from one want on, and the want its run ends before. */
  private record Rest(long weight, int next) {}

  TurnTimes(ControlLedger controls, Weights weights) {
    this.controls = controls;
    this.weights = weights;
  }

  /** The least weight of the turns. */
  long cost(int control) {
    List<Integer> wants = wants(control);
    List<Rest> rest = rests(control, wants);
    return rest.get(firstTurned(control, wants, rest)).weight();
  }

  /** The turns that weigh least, as late as they may be. */
  List<Turn> turns(int control) {
    List<Integer> wants = wants(control);
    List<Rest> rest = rests(control, wants);
    List<Turn> turns = new ArrayList<>();
    for (int i = firstTurned(control, wants, rest); i < wants.size(); i = rest.get(i).next()) {
      int next = rest.get(i).next();
      int end = next < wants.size() ? wants.get(next) : controls.columns();
      turns.add(new Turn(turn(wants, i), wants.get(i), end));
    }
    return turns;
  }

  private List<Integer> wants(int control) {
    List<Integer> wants = new ArrayList<>();
    for (int t = controls.next(control, 0);
        t < controls.columns();
        t = controls.next(control, t + 1)) {
      wants.add(t);
    }
    return wants;
  }

  /** For each want: the least weight of turning for it and for all that follow. */
  private List<Rest> rests(int control, List<Integer> wants) {
    Rest[] rest = new Rest[wants.size() + 1];
    rest[wants.size()] = new Rest(0, wants.size());
    for (int i = wants.size() - 1; i >= 0; i--) {
      double low = Double.NEGATIVE_INFINITY;
      double high = Double.POSITIVE_INFINITY;
      Rest best = new Rest(Long.MAX_VALUE, i);
      for (int j = i; j < wants.size(); j++) {
        low = Math.max(low, controls.low(control, wants.get(j)));
        high = Math.min(high, controls.high(control, wants.get(j)));
        if (low > high) {
          break;
        }
        if (rest[j + 1].weight() <= best.weight()) {
          best = new Rest(rest[j + 1].weight(), j + 1);
        }
      }
      rest[i] = new Rest(best.weight() + weights.at(turn(wants, i)), best.next());
    }
    return List.of(rest);
  }

  /** The latest of the cheapest changeovers in which to turn for want {@code i}. */
  private int turn(List<Integer> wants, int i) {
    int from = i == 0 ? 1 : wants.get(i - 1) + 1;
    int best = wants.get(i);
    for (int t = best - 1; t >= from; t--) {
      best = weights.at(t) < weights.at(best) ? t : best;
    }
    return best;
  }

  /** The want that the first turn is for: from a known position perhaps not the first of all. */
  private int firstTurned(int control, List<Integer> wants, List<Rest> rest) {
    int best = 0;
    double start = controls.start(control);
    for (int i = 0; i < wants.size(); i++) {
      boolean suits =
          controls.low(control, wants.get(i)) <= start
              && start <= controls.high(control, wants.get(i));
      if (!suits) {
        break;
      }
      best = rest.get(i + 1).weight() <= rest.get(best).weight() ? i + 1 : best;
    }
    return best;
  }
}
