package entracte.plan;

import java.util.Arrays;
import java.util.Optional;

/**
 * The exact cost of a casting, kept up to date move by move. To try a change, list it in {@link
 * #edits}; {@link #apply} makes it and tells the new cost; {@link #undo} takes it back. Only what
 * the change can reach is worked out again: the uses before and after it in every jack it touches,
 * and the paths of events these lie on.
 */
final class Ledger {
  /** What a fault weighs, in typical moves: more than any detour around it. */
  private static final long FAULT = 200 * Weights.CHANGEOVER;

  private static final int MOVES_TO_ADD = 2;

  final Layout layout;
  private final CordLedger cords;
  private final PlugPaths paths;

  /** Plays the changeovers where the stock is tight. */
  private final Optional<BagRule> bag;

  private final RigIndex rig;
  private final long fault;
  private long plugging;
  private long turning;

  /** The moves that the additions alone must take; see {@link #surplus}. */
  private int adding;

  private final Edits edits;
  private final IntBag uses;
  private final IntBag seeds;
  private final IntBag controls;
  private final int[] seenEvent;
  private int round;
  private int[] oldAddFrom = new int[64];
  private int[] oldRemoveTo = new int[64];
  private final long[] controlCost;
  private final long[] oldControlCost;
  private long oldPlugging;
  private long oldTurning;
  private int oldAdding;

  Ledger(Problem problem, Casting casting, Stock stock) {
    this(problem, new Layout(problem, casting), stock);
  }

  Ledger(Problem problem, Layout layout, Stock stock) {
    this.layout = layout;
    cords = layout.cords;
    rig = problem.rig;
    fault = (long) (FAULT * problem.prices.typical);
    paths = new PlugPaths(cords, problem);
    edits = new Edits(problem);
    int all = cords.columnOf.length;
    uses = new IntBag(all);
    seeds = new IntBag(2 * all);
    controls = new IntBag(rig.controls.size());
    seenEvent = new int[2 * all];
    controlCost = new long[rig.controls.size()];
    oldControlCost = new long[rig.controls.size()];
    bag = stock == Stock.TIGHT ? Optional.of(new BagRule(problem, cords)) : Optional.empty();
    for (int use = 0; use < all; use++) {
      if (cords.sourceOf[use] != CordLedger.NOTHING) {
        cords.findWindows(use);
        seed(use);
      }
    }
    plugging = bag.isPresent() ? bag.get().play(layout.firstUse) : pathCosts(1);
    for (int control = 0; control < controlCost.length; control++) {
      controlCost[control] = layout.controlCost(control);
      turning += controlCost[control];
    }
  }

  /** The weight of all moves, without regard to faults and to the stock. */
  long moves() {
    return plugging + turning;
  }

  /** The weight of all turns and flips. */
  long turning() {
    return turning;
  }

  /**
   * By how many moves the plugging surpasses what its additions alone must take. A plan of A
   * additions has at least 2 A moves; so if more must be added, the first of them may be free, by
   * pairs with removals that are counted already, for as many moves as this.
   */
  int surplus() {
    return Weights.changeoverMoves(plugging) - adding;
  }

  /** The weight of all moves and faults. */
  long cost() {
    return plugging + turning + fault * layout.faults();
  }

  Edits edits() {
    return edits;
  }

  /** Makes the listed changes. */
  void apply() {
    uses.clear();
    seeds.clear();
    controls.clear();
    touchAll();
    oldPlugging = plugging;
    oldTurning = turning;
    oldAdding = adding;
    if (bag.isPresent()) {
      edits.swapIn(layout);
      plugging = bag.get().play(layout.firstUse);
    } else {
      replug();
    }
    for (int i = 0; i < controls.size(); i++) {
      int control = controls.get(i);
      oldControlCost[i] = controlCost[control];
      long now = layout.controlCost(control);
      turning += now - controlCost[control];
      controlCost[control] = now;
    }
  }

  private void replug() {
    keepWindows();
    gatherSeeds();
    plugging -= pathCosts(-1);
    edits.swapIn(layout);
    for (int i = 0; i < uses.size(); i++) {
      if (cords.sourceOf[uses.get(i)] != CordLedger.NOTHING) {
        cords.findWindows(uses.get(i));
      }
    }
    plugging += pathCosts(1);
  }

  /** Keeps the changes applied last. */
  void accept() {
    edits.clear();
  }

  /** Takes back the changes applied last. */
  void undo() {
    edits.swapIn(layout);
    for (int i = 0; i < uses.size() && bag.isEmpty(); i++) {
      cords.addFrom[uses.get(i)] = oldAddFrom[i];
      cords.removeTo[uses.get(i)] = oldRemoveTo[i];
    }
    for (int i = 0; i < controls.size(); i++) {
      controlCost[controls.get(i)] = oldControlCost[i];
    }
    plugging = oldPlugging;
    turning = oldTurning;
    adding = oldAdding;
    edits.clear();
  }

  private void keepWindows() {
    if (oldAddFrom.length < uses.size()) {
      oldAddFrom = Arrays.copyOf(oldAddFrom, 2 * uses.size());
      oldRemoveTo = Arrays.copyOf(oldRemoveTo, 2 * uses.size());
    }
    for (int i = 0; i < uses.size(); i++) {
      oldAddFrom[i] = cords.addFrom[uses.get(i)];
      oldRemoveTo[i] = cords.removeTo[uses.get(i)];
    }
  }

  private void touchAll() {
    for (int i = 0; i < edits.size(); i++) {
      int song = edits.song(i);
      if (edits.isToggle(i)) {
        touchStrip(edits.strip(i), song + 1);
        continue;
      }
      int role = edits.role(i);
      touchModule(layout.casting.module[song][role], song);
      touchModule(edits.module(song, role), song);
      for (int cord : layout.shape(song).cordsOfRole[role]) {
        touchUse(layout.use(song, cord));
        touchEnd(song, 2 * cord);
        touchEnd(song, 2 * cord + 1);
      }
    }
  }

  /** Touches the socket of an end before and after; where the strip is not known, any of them. */
  private void touchEnd(int song, int end) {
    int before = layout.socket(song, end);
    int after = edits.socket(layout, song, end);
    touchSocket(before, song + 1);
    touchSocket(after, song + 1);
    if (layout.shape(song).stripOfEnd[end] >= 0
        && (before == CordLedger.NOTHING || after == CordLedger.NOTHING)) {
      int role = layout.shape(song).roleOfEnd[end];
      touchGroup(song, end, layout.casting.module[song][role]);
      touchGroup(song, end, edits.newModule(layout, song, role));
    }
  }

  private void touchGroup(int song, int end, int module) {
    if (module != Casting.UNCAST) {
      for (int socket : StripChoice.sockets(rig, layout.shape(song), end, module)) {
        touchSocket(socket, song + 1);
      }
    }
  }

  /**
   * Touches the controls of a module and, if cords may wait there otherwise than so far, its jacks.
   */
  private void touchModule(int module, int song) {
    if (module == Casting.UNCAST) {
      return;
    }
    int first = rig.firstStrip[module][0];
    int end = module + 1 < rig.firstStrip.length ? rig.firstStrip[module + 1][0] : rig.strips();
    boolean stays = cords.isPlaying(module, song + 1) && edits.seats(song, module);
    for (int strip = first; strip < end; strip++) {
      if (!stays || rig.closedControls[strip].length > 0) {
        touchSinks(strip, song + 1);
      }
    }
    for (int c = rig.firstControlOfStrip[first]; c < rig.firstControlOfStrip[end]; c++) {
      controls.add(c);
    }
  }

  private void touchSinks(int strip, int column) {
    int end = rig.firstSocketOfStrip[strip + 1];
    for (int socket = rig.firstSocketOfStrip[strip]; socket < end; socket++) {
      if (!rig.outSocket[socket]) {
        touchSocket(socket, column);
      }
    }
  }

  private void touchStrip(int strip, int column) {
    for (int s = rig.firstSocketOfStrip[strip]; s < rig.firstSocketOfStrip[strip + 1]; s++) {
      touchSocket(s, column);
    }
    for (int control : rig.closedControls[strip]) {
      controls.add(control);
    }
  }

  private void touchSocket(int socket, int column) {
    if (socket == CordLedger.NOTHING) {
      return;
    }
    touchUse(cords.previousUse(socket, column));
    touchUse(cords.use(socket, column));
    touchUse(cords.nextUse(socket, column));
  }

  private void touchUse(int use) {
    if (use != CordLedger.NOTHING) {
      uses.add(use);
    }
  }

  /** The uses touched and all that could be joined to them on a path, before or after. */
  private void gatherSeeds() {
    for (int i = 0; i < uses.size(); i++) {
      int use = uses.get(i);
      seed(use);
      if (cords.sourceOf[use] == CordLedger.NOTHING) {
        continue;
      }
      seedNeighbours(cords.sourceOf[use], cords.columnOf[use]);
      seedNeighbours(cords.sinkOf[use], cords.columnOf[use]);
    }
  }

  private void seedNeighbours(int socket, int column) {
    int before = cords.previousUse(socket, column);
    if (before != CordLedger.NOTHING) {
      seed(before);
    }
    int after = cords.nextUse(socket, column);
    if (after != CordLedger.NOTHING) {
      seed(after);
    }
  }

  private void seed(int use) {
    seeds.add(PlugPaths.removal(use));
    seeds.add(PlugPaths.addition(use));
  }

  /**
   * What all paths through a seed cost; what their additions alone must take is entered with the
   * given sign. The events on them become seeds as well: should a change tear a path apart, its
   * pieces are all found again.
   */
  private long pathCosts(int sign) {
    round++;
    long sum = 0;
    for (int i = 0; i < seeds.size(); i++) {
      sum += pathCost(seeds.get(i), sign);
    }
    return sum;
  }

  private long pathCost(int event, int sign) {
    if (seenEvent[event] == round || !paths.happens(event)) {
      return 0;
    }
    int length = paths.walk(event);
    for (int i = 0; i < length; i++) {
      seenEvent[paths.event(i)] = round;
      seeds.add(paths.event(i));
    }
    adding += sign * MOVES_TO_ADD * paths.lateAdditions();
    return paths.cost();
  }
}
