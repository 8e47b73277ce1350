package entracte.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Follows each cord of a {@link BagFlow} from place to place, for the length that it needs. */
final class BagLives {
  private final Problem problem;
  private final BagFlow flow;
  private final BagPlaces places;

  /** The place in the column before or after, by place and column, or {@link BagRule#NONE}. */
  private final int[][] before;

  private final int[][] after;

  /** The length of a cord that was there at the start, or 0 if any will do. */
  private final int[][] given;

  /** The greatest length that the cord needs anywhere, or has. */
  private final int[][] need;

  BagLives(Problem problem, CordLedger cords, BagFlow flow, BagPlaces places) {
    this.problem = problem;
    this.flow = flow;
    this.places = places;
    int columns = cords.columns;
    before = empty(places.count(), columns);
    after = empty(places.count(), columns);
    given = new int[places.count()][columns];
    need = new int[places.count()][columns];
    for (int place = 0; place < given.length; place++) {
      int first = places.uses.get(place).get(0);
      boolean stands = cords.columnOf[first] == 0 && flow.holds(place, 0);
      given[place][0] = stands ? problem.start.state().lengthCm().get(first) : 0;
    }
    for (BagBan shift : flow.shifts()) {
      after[shift.place()][shift.column()] = shift.next();
    }
    follow(columns);
  }

  private static int[][] empty(int places, int columns) {
    int[][] empty = new int[places][columns];
    Arrays.stream(empty).forEach(row -> Arrays.fill(row, BagRule.NONE));
    return empty;
  }

  private void follow(int columns) {
    for (int column = 0; column < columns; column++) {
      for (int place = 0; place < after.length; place++) {
        if (flow.stays(place, column)) {
          after[place][column] = place;
        }
        if (after[place][column] >= 0) {
          before[after[place][column]][column + 1] = place;
        }
      }
    }
    for (int column = 0; column < columns; column++) {
      for (int place = 0; place < after.length; place++) {
        int earlier = before[place][column];
        if (earlier >= 0) {
          given[place][column] = given[earlier][column - 1];
          need[place][column] = need[earlier][column - 1];
        }
        int own = Math.max(given[place][column], places.lengthNeeded(place, problem));
        need[place][column] = Math.max(need[place][column], own);
      }
    }
    for (int column = columns - 2; column >= 0; column--) {
      for (int place = 0; place < after.length; place++) {
        int later = after[place][column];
        need[place][column] =
            Math.max(need[place][column], later < 0 ? 0 : need[later][column + 1]);
      }
    }
  }

  /** Whether there is a cord in a place that must be so long at least. */
  boolean needs(int place, int column, int length) {
    return flow.holds(place, column) && need[place][column] >= length;
  }

  /** Whether a cord from the start is too short for where it is now. */
  boolean isTooShort(int place, int column) {
    return flow.holds(place, column)
        && given[place][column] > 0
        && given[place][column] < places.lengthNeeded(place, problem);
  }

  /** Bans of which one must hold if no cord that must be so long is to be in a place. */
  List<BagBan> against(int place, int column, int length) {
    if (places.lengthNeeded(place, problem) >= length) {
      boolean waits = !places.isRequired(place, column);
      return waits ? List.of(BagBan.from(place, column)) : List.of();
    }
    if (given[place][column] >= length) {
      return sinceStart(place, column);
    }
    List<BagBan> bans = earlier(place, column, length);
    return bans.isEmpty() ? later(place, column, length) : bans;
  }

  /** The whole way of a cord from where it came into the rig, last step first. */
  List<BagBan> sinceStart(int place, int column) {
    List<BagBan> bans = new ArrayList<>();
    int at = place;
    for (int c = column; before[at][c] >= 0; c--) {
      bans.add(new BagBan(before[at][c], c - 1, at));
      at = before[at][c];
    }
    return bans;
  }

  /** The way here from the last place that needs the length; empty if there is none. */
  private List<BagBan> earlier(int place, int column, int length) {
    List<BagBan> bans = new ArrayList<>();
    for (BagBan step : sinceStart(place, column)) {
      bans.add(step);
      if (places.lengthNeeded(step.place(), problem) >= length) {
        return bans;
      }
    }
    return List.of();
  }

  /** The way from here to the next place that needs the length; empty if there is none. */
  private List<BagBan> later(int place, int column, int length) {
    List<BagBan> bans = new ArrayList<>();
    int at = place;
    for (int c = column; after[at][c] >= 0; c++) {
      bans.add(new BagBan(at, c, after[at][c]));
      at = after[at][c];
      if (places.lengthNeeded(at, problem) >= length) {
        return bans;
      }
    }
    return List.of();
  }
}
