package entracte.plan;

import java.util.Arrays;

/**
 * One changeover of {@link BagRule}: which cords go, which come, and which of those that come are
 * cords of which one plug stays. The most pairs are found by augmenting paths (Kuhn 1955); a pair
 * must have the length, and may not take a long cord that another comer has no other for.
 */
final class BagPairing {
  private final Problem problem;
  private final CordLedger cords;
  private final BagStays stays;
  private final Bag bag;
  private final int[] goes;
  private int going;
  private final int[] comes;
  private int coming;

  /** The going stay that each comer continues, or -1. */
  private final int[] continues;

  private final int[] continuedBy;
  private boolean[] tried;
  private final int[] wanting;

  BagPairing(Problem problem, CordLedger cords, BagStays stays, Bag bag) {
    this.problem = problem;
    this.cords = cords;
    this.stays = stays;
    this.bag = bag;
    int most = 2 * cords.columnOf.length + 1;
    goes = new int[most];
    comes = new int[most];
    continues = new int[most];
    continuedBy = new int[most];
    tried = new boolean[most];
    wanting = new int[bag.lengths() + 1];
  }

  void begin() {
    going = 0;
    coming = 0;
  }

  void goes(int stay) {
    goes[going++] = stay;
  }

  void comes(int use) {
    comes[coming++] = use;
  }

  int going() {
    return going;
  }

  int coming() {
    return coming;
  }

  /** The number of the least length for a use. */
  int need(int use) {
    int a = problem.rig.moduleOfSocket[cords.sourceOf[use]];
    int b = problem.rig.moduleOfSocket[cords.sinkOf[use]];
    return Math.max(0, bag.indexOf(problem.lengthNeeded[a][b]));
  }

  boolean sharesJack(int use) {
    for (int c = 0; c < coming; c++) {
      if (shareJack(use, comes[c])) {
        return true;
      }
    }
    return false;
  }

  private boolean shareJack(int use, int other) {
    int source = cords.sourceOf[use];
    int sink = cords.sinkOf[use];
    return source == cords.sourceOf[other]
        || source == cords.sinkOf[other]
        || sink == cords.sourceOf[other]
        || sink == cords.sinkOf[other];
  }

  /** The least length of which the bag has too few for all comers, or -1. */
  int lack() {
    Arrays.fill(wanting, 0);
    for (int c = 0; c < coming; c++) {
      wanting[need(comes[c])]++;
    }
    return firstLack();
  }

  private int firstLack() {
    int spare = 0;
    for (int length = bag.lengths() - 1; length >= 0; length--) {
      spare += bag.left(length) - wanting[length];
      if (spare < 0) {
        return length;
      }
    }
    return BagRule.NONE;
  }

  /** Pairs comers with goers. */
  void pair() {
    Arrays.fill(continues, 0, coming, BagRule.NONE);
    Arrays.fill(continuedBy, 0, going, BagRule.NONE);
    for (int c = 0; c < coming; c++) {
      Arrays.fill(tried, 0, going, false);
      augment(c);
    }
    takePaired();
  }

  private boolean augment(int c) {
    for (int g = 0; g < going; g++) {
      if (!tried[g] && mayContinue(goes[g], comes[c])) {
        tried[g] = true;
        if (continuedBy[g] < 0 || augment(continuedBy[g])) {
          continuedBy[g] = c;
          continues[c] = g;
          return true;
        }
      }
    }
    return false;
  }

  private boolean mayContinue(int stay, int use) {
    return stays.length(stay) >= need(use) && shareJack(stays.lastUse(stay), use);
  }

  /** Takes the paired cords, letting go of pairs that would leave another comer without. */
  private void takePaired() {
    for (int c = 0; c < coming; c++) {
      if (continues[c] < 0) {
        continue;
      }
      int length = stays.length(goes[continues[c]]);
      int need = need(comes[c]);
      bag.take(length);
      wanting[need]--;
      if (firstLack() >= 0) {
        bag.giveBack(length);
        wanting[need]++;
        continues[c] = BagRule.NONE;
      }
    }
  }

  /** Opens the stay of a comer; call in order, after {@link #pair}. */
  int plug(int c, int column) {
    int use = comes[c];
    if (continues[c] >= 0) {
      int before = goes[continues[c]];
      return stays.open(use, column, stays.length(before), before);
    }
    int need = need(use);
    int length = need;
    for (; length < bag.lengths(); length++) {
      if (bag.left(length) > 0) {
        bag.take(length);
        wanting[need]--;
        if (firstLack() < 0) {
          break;
        }
        bag.giveBack(length);
        wanting[need]++;
      }
    }
    return stays.open(use, column, length, BagRule.NONE);
  }
}
