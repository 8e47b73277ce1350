package entracte.plan;

/**
 * The job-sequencing and tool-switching problem (Tang and Denardo, Operations Research 36, 1988):
 * each song needs some tools, the magazine holds so many, the first filling is free, and each tool
 * put in later is a switch.
 *
 * @param needs the tools of each song as bits; none needs more than there are slots
 */
record ToolSwitches(long[] needs, int slots) {
  ToolSwitches {
    needs = needs.clone();
    for (long need : needs) {
      if (Long.bitCount(need) > slots) {
        throw new IllegalArgumentException("a song needs more tools than there are slots");
      }
    }
  }

  int songs() {
    return needs.length;
  }

  /** The tools that the first {@code count} songs of an order need. */
  long used(int[] order, int count) {
    long used = 0;
    for (int k = 0; k < count; k++) {
      used |= needs[order[k]];
    }
    return used;
  }

  /** The fewest switches of an order. */
  int of(int[] order) {
    int count = order.length;
    return insertions(order, count) - Math.min(slots, Long.bitCount(used(order, count)));
  }

  /**
   * How often a tool is put in during the first {@code count} songs, at best, the first filling
   * counted: keep the tools needed soonest, which is optimal for a fixed order.
   */
  int insertions(int[] order, int count) {
    long magazine = 0;
    int put = 0;
    for (int k = 0; k < count; k++) {
      long need = needs[order[k]];
      put += Long.bitCount(need & ~magazine);
      int tooMany = Long.bitCount(magazine | need) - slots;
      if (tooMany > 0) {
        magazine &= ~neededLast(magazine & ~need, tooMany, order, k + 1, count);
      }
      magazine |= need;
    }
    return put;
  }

  /** So many of the tools at hand, those whose next use is furthest away. */
  private long neededLast(long tools, int howMany, int[] order, int from, int count) {
    long left = tools;
    for (int k = from; k < count; k++) {
      long later = left & ~needs[order[k]];
      if (Long.bitCount(later) < howMany) {
        return later | lowest(left & needs[order[k]], howMany - Long.bitCount(later));
      }
      left = later;
    }
    return lowest(left, howMany);
  }

  private static long lowest(long tools, int howMany) {
    long chosen = 0;
    long left = tools;
    for (int i = 0; i < howMany; i++) {
      chosen |= Long.lowestOneBit(left);
      left &= left - 1;
    }
    return chosen;
  }

  /** What any order pays at least for each step: what two neighbours need beyond the slots. */
  int[][] steps() {
    int[][] steps = new int[songs()][songs()];
    for (int a = 0; a < songs(); a++) {
      for (int b = 0; b < songs(); b++) {
        steps[a][b] = a == b ? 0 : Math.max(0, Long.bitCount(needs[a] | needs[b]) - slots);
      }
    }
    return steps;
  }
}
