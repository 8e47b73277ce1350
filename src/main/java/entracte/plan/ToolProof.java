package entracte.plan;

/**
 * The least switches of any permitted order, by depth-first branch and bound from the first song
 * on. Two bounds cut a beginning off: the insertions that it needs, and one for every tool that is
 * still to come; and the switches that it needs, and the cheapest way through the songs that remain
 * as {@link PathOrders} knows it. Exact if the steps suffice. The switches of an order are those of
 * its reverse, so that where no order is forbidden, one of the two is enough.
 */
final class ToolProof {
  private final ToolSwitches tools;
  private final OrderSteps steps;
  private final PathOrders paths;
  private final boolean eitherWay;
  private final int[] order;
  private final long all;
  private int[] best;
  private int bestCost;
  private long stepsLeft;

  /**
   * @param eitherWay whether the reverse of each permitted order is permitted as well
   */
  ToolProof(ToolSwitches tools, OrderSteps steps, boolean eitherWay) {
    this.tools = tools;
    this.steps = steps;
    this.eitherWay = eitherWay;
    paths = new PathOrders(tools.steps(), steps);
    order = new int[tools.songs()];
    long union = 0;
    for (long need : tools.needs()) {
      union |= need;
    }
    all = union;
  }

  /** What no order can be better than, without any search. */
  int bound() {
    return Math.max(Long.bitCount(all) - tools.slots(), Math.max(0, paths.least()));
  }

  /**
   * Looks for an order better than {@code known}.
   *
   * @return whether the search was complete, so that {@link #best} is a best order
   */
  boolean search(int[] known, long mostSteps) {
    best = known.clone();
    bestCost = tools.of(known);
    stepsLeft = mostSteps;
    if (bestCost > bound()) {
      extend(0, 0);
    }
    return stepsLeft >= 0;
  }

  int[] best() {
    return best;
  }

  int bestCost() {
    return bestCost;
  }

  private void extend(int placed, int count) {
    if (count == order.length) {
      int cost = tools.of(order);
      if (cost < bestCost) {
        bestCost = cost;
        best = order.clone();
      }
      return;
    }
    int last = count == 0 ? 0 : order[count - 1];
    for (int next = 0; next < order.length && stepsLeft >= 0; next++) {
      if ((placed >> next & 1) == 0
          && steps.mayFollow(placed, last, next)
          && !isMirrored(count, next)) {
        order[count] = next;
        stepsLeft--;
        if (bound(placed | 1 << next, count + 1) < bestCost) {
          extend(placed | 1 << next, count + 1);
        }
      }
    }
  }

  private boolean isMirrored(int count, int next) {
    return eitherWay && count == order.length - 1 && count > 0 && next < order[0];
  }

  private int bound(int placed, int count) {
    int put = tools.insertions(order, count);
    long used = tools.used(order, count);
    int toCome = Long.bitCount(all & ~used);
    int byTools = put + toCome - Math.min(tools.slots(), Long.bitCount(all));
    int byPath =
        put - Math.min(tools.slots(), Long.bitCount(used)) + paths.rest(placed, order[count - 1]);
    return Math.max(byTools, byPath);
  }
}
