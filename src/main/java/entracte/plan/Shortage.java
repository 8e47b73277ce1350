package entracte.plan;

import java.util.Arrays;

/**
 * About what it costs more that the bag is short: where more cords wait than there are, some have
 * to come out. A cord that waits between two songs and has to go takes a removal and an addition;
 * one that could stay to the end, or be put in before the show, one of the two. Whatever song is
 * the first with too many, the cord that is needed furthest in the future goes (keep tool needed
 * soonest: Tang and Denardo 1988).
 *
 * <p>This leaves out lengths, and cords that move on from jack to jack, so that it is only what a
 * search goes by; {@link Finish} finds the truth. Time: the square of the songs.
 */
final class Shortage {
  private static final int NONE = -1;
  private static final int MOVES_OF_A_STAY = 4;
  private static final int MOVES_OF_AN_END = 2;

  private final CordLedger cords;
  private final int columns;
  private final int setUpColumn;

  /** How many cords may wait in each column. */
  private final int[] room;

  /** How many cords wait from one column up to another: those that cost both ways, then others. */
  private final int[] waiting;

  private final int others;
  private final int[] staysUntil;
  private final int[] endsUntil;
  private final long price;

  /** What was taken off and what was put on since {@link #begin}. */
  private int[] left = new int[64];

  private int[] entered = new int[64];
  private int leftCount;
  private int enteredCount;

  Shortage(Problem problem, Layout layout) {
    cords = layout.cords;
    columns = cords.columns;
    setUpColumn = problem.weights.setUpColumn();
    price = (long) (problem.prices.typical * Weights.CHANGEOVER);
    room = new int[columns];
    int stock = problem.rig.rig.cords().total();
    for (int column = 1; column < columns; column++) {
      room[column] = Math.max(0, stock - layout.shape(column - 1).cords());
    }
    others = columns * (columns + 1);
    waiting = new int[2 * others];
    staysUntil = new int[columns + 1];
    endsUntil = new int[columns + 1];
  }

  void begin() {
    leftCount = 0;
    enteredCount = 0;
  }

  /** Forgets how long the cord of an event waits, before a change. */
  void leave(int event) {
    if (leftCount == left.length) {
      left = Arrays.copyOf(left, 2 * leftCount);
    }
    left[leftCount++] = count(wait(event), -1);
  }

  /** Takes note of how long it waits after the change. */
  void enter(int event) {
    if (enteredCount == entered.length) {
      entered = Arrays.copyOf(entered, 2 * enteredCount);
    }
    entered[enteredCount++] = count(wait(event), 1);
  }

  void undo() {
    for (int i = 0; i < enteredCount; i++) {
      count(entered[i], -1);
    }
    for (int i = 0; i < leftCount; i++) {
      count(left[i], 1);
    }
  }

  private int count(int wait, int by) {
    if (wait != NONE) {
      waiting[wait] += by;
    }
    return wait;
  }

  /** From when until when a cord waits for want of a removal or an addition. */
  private int wait(int event) {
    int use = PlugPaths.useOf(event);
    if (cords.sourceOf[use] == CordLedger.NOTHING) {
      return NONE;
    }
    int column = cords.columnOf[use];
    if (PlugPaths.isAddition(event)) {
      boolean early = cords.addFrom[use] != 0 && cords.addFrom[use] <= setUpColumn;
      return early && column > 1 ? others + place(1, column) : NONE;
    }
    if (cords.removeTo[use] != 0) {
      return NONE;
    }
    int next = cords.nextUse(cords.sourceOf[use], column);
    int until = next == CordLedger.NOTHING ? columns : cords.columnOf[next];
    if (until == column + 1) {
      return NONE;
    }
    boolean bothWays = next != CordLedger.NOTHING && (column > 0 || setUpColumn == 0);
    return (bothWays ? 0 : others) + place(column + 1, until);
  }

  private int place(int from, int until) {
    return from * (columns + 1) + until;
  }

  /** The weight of what has to come out. */
  long cost() {
    Arrays.fill(staysUntil, 0);
    Arrays.fill(endsUntil, 0);
    int furthestStay = 0;
    int furthestEnd = 0;
    int plugged = 0;
    long moves = 0;
    for (int column = 1; column < columns; column++) {
      plugged -= staysUntil[column] + endsUntil[column];
      for (int until = column + 1; until <= columns; until++) {
        int stays = waiting[place(column, until)];
        int ends = waiting[others + place(column, until)];
        if (stays + ends > 0) {
          staysUntil[until] += stays;
          endsUntil[until] += ends;
          plugged += stays + ends;
          furthestStay = stays > 0 ? Math.max(furthestStay, until) : furthestStay;
          furthestEnd = ends > 0 ? Math.max(furthestEnd, until) : furthestEnd;
        }
      }
      for (; plugged > room[column]; plugged--) {
        furthestStay = furthest(staysUntil, furthestStay);
        furthestEnd = furthest(endsUntil, furthestEnd);
        if (furthestEnd > column && 2 * (furthestEnd - column) >= furthestStay - column) {
          endsUntil[furthestEnd]--;
          moves += MOVES_OF_AN_END;
        } else {
          staysUntil[furthestStay]--;
          moves += MOVES_OF_A_STAY;
        }
      }
    }
    return moves * price;
  }

  private static int furthest(int[] until, int from) {
    int furthest = from;
    while (furthest > 0 && until[furthest] == 0) {
      furthest--;
    }
    return furthest;
  }
}
