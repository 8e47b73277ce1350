package entracte.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Where every cord is in every column, once the times of its coming and going are settled. */
final class Stays {
  final List<Stay> all = new ArrayList<>();

  /** The stay that a stay's cord moves on to with one plug, or -1. */
  final int[] shiftsTo;

  private final CordLedger cords;

  Stays(CordLedger cords, PlugSchedule schedule) {
    this.cords = cords;
    int[] stayAddedBy = new int[2 * cords.columnOf.length];
    Arrays.fill(stayAddedBy, CordLedger.NOTHING);
    List<Integer> removals = new ArrayList<>();
    for (int use = 0; use < cords.columnOf.length; use++) {
      boolean begins =
          cords.sourceOf[use] != CordLedger.NOTHING
              && (cords.addFrom[use] != 0 || cords.columnOf[use] == 0);
      if (begins) {
        stayAddedBy[PlugPaths.addition(use)] = all.size();
        removals.add(follow(use, schedule));
      }
    }
    shiftsTo = new int[all.size()];
    for (int stay = 0; stay < shiftsTo.length; stay++) {
      int removal = removals.get(stay);
      int addition = removal < 0 ? CordLedger.NOTHING : schedule.partner[removal];
      shiftsTo[stay] = addition < 0 ? CordLedger.NOTHING : stayAddedBy[addition];
    }
  }

  /** What a flow of cords does. */
  Stays(CordLedger cords, BagPlaces places, BagFlow flow) {
    this.cords = cords;
    int[][] stayAt = new int[places.count()][cords.columns];
    for (int place = 0; place < stayAt.length; place++) {
      Arrays.fill(stayAt[place], BagRule.NONE);
      for (int column = 0; column < cords.columns; column++) {
        if (flow.holds(place, column) && stayAt[place][column] < 0) {
          addStay(places.uses.get(place), place, column, flow, stayAt);
        }
      }
    }
    shiftsTo = new int[all.size()];
    Arrays.fill(shiftsTo, BagRule.NONE);
    for (BagBan shift : flow.shifts()) {
      shiftsTo[stayAt[shift.place()][shift.column()]] = stayAt[shift.next()][shift.column() + 1];
    }
  }

  private void addStay(List<Integer> uses, int place, int from, BagFlow flow, int[][] stayAt) {
    int to = from;
    stayAt[place][from] = all.size();
    while (flow.stays(place, to)) {
      stayAt[place][++to] = all.size();
    }
    int end = to;
    List<Integer> served =
        uses.stream()
            .filter(use -> from <= cords.columnOf[use] && cords.columnOf[use] <= end)
            .toList();
    all.add(new Stay(from, to, served.isEmpty() ? List.of(uses.get(0)) : served));
  }

  /** What {@link BagRule} did when it last played. */
  Stays(CordLedger cords, BagStays played) {
    this.cords = cords;
    int[] numberOf = new int[played.count()];
    for (int stay = 0; stay < numberOf.length; stay++) {
      if (played.counts(stay)) {
        numberOf[stay] = all.size();
        all.add(new Stay(played.from(stay), played.to(stay), usesOf(played, stay)));
      }
    }
    shiftsTo = new int[all.size()];
    Arrays.fill(shiftsTo, BagRule.NONE);
    for (int stay = 0; stay < numberOf.length; stay++) {
      if (played.counts(stay) && played.cameFrom(stay) >= 0) {
        shiftsTo[numberOf[played.cameFrom(stay)]] = numberOf[stay];
      }
    }
  }

  private List<Integer> usesOf(BagStays played, int stay) {
    return IntStream.range(0, cords.columnOf.length)
        .filter(use -> cords.sourceOf[use] != CordLedger.NOTHING && played.stayOf(use) == stay)
        .boxed()
        .toList();
  }

  /** Adds the stay that begins with a use; returns the event that ends it, or -1. */
  private int follow(int first, PlugSchedule schedule) {
    List<Integer> uses = new ArrayList<>(List.of(first));
    int use = first;
    while (cords.isKept(use)) {
      use = cords.nextUse(cords.sourceOf[use], cords.columnOf[use]);
      uses.add(use);
    }
    int begins = cords.columnOf[first] == 0 ? 0 : schedule.time[PlugPaths.addition(first)];
    int removal = PlugPaths.removal(use);
    boolean ends = cords.removeTo[use] != 0;
    all.add(new Stay(begins, ends ? schedule.time[removal] - 1 : cords.columns - 1, uses));
    return ends ? removal : CordLedger.NOTHING;
  }
}
