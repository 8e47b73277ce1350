package entracte.plan;

import entracte.rig.CordStock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Knows a set whose order is nothing but a tool-switching problem: every song can be cast in one
 * way only, no knob or switch is wanted at two positions, no two cords ever share a jack, and each
 * may stay in whenever it is not needed. A tool is a cord, the magazine is the bag.
 *
 * <p>Then the fewest moves of an order are four for each of its fewest switches. A switch is a cord
 * plugged, two moves, and once the bag is empty another pulled, two more. A cord need not be pulled
 * only while a slot is empty since the set-up; but such a slot could have held, from the set-up on,
 * the cord that fills it first (or the one pulled instead of using the empty slot), which saves a
 * switch. So with the fewest switches no slot is empty, and with more switches the pulls saved are
 * at most as many as the switches added.
 */
final class ToolSets {
  static final int MOVES_PER_SWITCH = 4;

  private final Problem problem;
  private final Layout layout;
  private final Map<List<Integer>, Integer> tools = new HashMap<>();
  private final long[] needs;

  private ToolSets(Problem problem, Casting casting) {
    this.problem = problem;
    layout = new Layout(problem, casting);
    needs = new long[problem.songs()];
  }

  /** The set as songs that need tools; empty if it is more than that. */
  static Optional<ToolSwitches> of(Problem problem, Casting casting) {
    CordStock stock = problem.rig.rig.cords();
    boolean plain =
        problem.parking
            && !stock.lengthMatters()
            && problem.startCords.length == 0
            && !problem.start.midSet()
            && Arrays.stream(problem.shapes).allMatch(all -> all.length == 1 && isForced(all[0]));
    return plain ? new ToolSets(problem, casting.copy()).find() : Optional.empty();
  }

  private static boolean isForced(Shape shape) {
    for (int[] candidates : shape.candidates) {
      if (candidates.length > 1) {
        return false;
      }
    }
    return shape.strips.stream().allMatch(strip -> strip.number() > 0);
  }

  private Optional<ToolSwitches> find() {
    CordLedger cords = layout.cords;
    for (int use = 0; use < cords.columnOf.length; use++) {
      if (cords.sourceOf[use] != CordLedger.NOTHING) {
        List<Integer> ends = List.of(cords.sourceOf[use], cords.sinkOf[use]);
        int tool = tools.computeIfAbsent(ends, all -> tools.size());
        if (tool >= Long.SIZE) {
          return Optional.empty();
        }
        needs[cords.columnOf[use] - 1] |= 1L << tool;
      }
    }
    int slots = problem.rig.rig.cords().total();
    boolean fits = java.util.Arrays.stream(needs).allMatch(n -> Long.bitCount(n) <= slots);
    return fits && layout.faults() == 0 && noneShares() && allMayWait() && nothingTurns()
        ? Optional.of(new ToolSwitches(needs, slots))
        : Optional.empty();
  }

  private boolean noneShares() {
    Set<Integer> sockets = new HashSet<>();
    return tools.keySet().stream().allMatch(e -> sockets.add(e.get(0)) && sockets.add(e.get(1)));
  }

  /** Whether the module at every sink plays only in songs that need the cord. */
  private boolean allMayWait() {
    List<Boolean> good = new ArrayList<>();
    tools.forEach(
        (ends, tool) -> {
          int module = layout.rig.moduleOfSocket[ends.get(1)];
          for (int song = 0; song < needs.length; song++) {
            boolean needed = (needs[song] >>> tool & 1) != 0;
            good.add(needed || !layout.cords.isPlaying(module, song + 1));
          }
        });
    return !good.contains(false);
  }

  /** If no control ever turns in one order, all that is wanted of it has a position in common. */
  private boolean nothingTurns() {
    long turning = 0;
    for (int control = 0; control < layout.rig.controls.size(); control++) {
      turning += layout.controls.cost(control);
    }
    return Weights.changeoverMoves(turning) == 0;
  }
}
