package entracte.plan;

import java.util.Optional;

/**
 * The exact cost of a casting, kept up to date move by move; with a short bag only about that: see
 * {@link Shortage}. To try a change, list it in {@link #edits}; {@link #apply} makes it and tells
 * the new cost; {@link #undo} takes it back. Only what the change can reach is worked out again:
 * the uses before and after it in every jack it touches, and the paths of events these lie on.
 */
final class Ledger {
  /** What a fault weighs, in typical moves: more than any detour around it. */
  private static final long FAULT = 200 * Weights.CHANGEOVER;

  final Layout layout;
  private final CordLedger cords;
  private final PathLedger paths;

  /** What comes on top where the stock is tight. */
  private final Optional<Shortage> shortage;

  private final RigIndex rig;
  private final long fault;
  private long plugging;
  private long turning;
  private final Edits edits;
  private final IntBag controls;
  private final long[] controlCost;
  private final long[] oldControlCost;
  private long oldPlugging;
  private long oldTurning;

  Ledger(Problem problem, Casting casting, Stock stock) {
    this(problem, new Layout(problem, casting), stock);
  }

  Ledger(Problem problem, Layout layout, Stock stock) {
    this.layout = layout;
    cords = layout.cords;
    rig = problem.rig;
    fault = (long) (FAULT * problem.prices.typical);
    edits = new Edits(problem);
    controls = new IntBag(rig.controls.size());
    controlCost = new long[rig.controls.size()];
    oldControlCost = new long[rig.controls.size()];
    shortage = stock == Stock.TIGHT ? Optional.of(new Shortage(problem, layout)) : Optional.empty();
    paths = new PathLedger(problem, cords, shortage);
    plugging = plug();
    for (int control = 0; control < controlCost.length; control++) {
      controlCost[control] = layout.controlCost(control);
      turning += controlCost[control];
    }
  }

  private long plug() {
    return paths.cost() + shortage.map(Shortage::cost).orElse(0L);
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
    return Weights.changeoverMoves(plugging) - paths.adding();
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
    oldPlugging = plugging;
    oldTurning = turning;
    controls.clear();
    paths.begin();
    touchAll();
    paths.leave();
    edits.swapIn(layout);
    paths.enter();
    plugging = plug();
    for (int i = 0; i < controls.size(); i++) {
      int control = controls.get(i);
      oldControlCost[i] = controlCost[control];
      long now = layout.controlCost(control);
      turning += now - controlCost[control];
      controlCost[control] = now;
    }
  }

  /** Keeps the changes applied last. */
  void accept() {
    paths.accept();
    edits.clear();
  }

  /** Takes back the changes applied last. */
  void undo() {
    edits.swapIn(layout);
    paths.undo();
    for (int i = 0; i < controls.size(); i++) {
      controlCost[controls.get(i)] = oldControlCost[i];
    }
    plugging = oldPlugging;
    turning = oldTurning;
    edits.clear();
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
        paths.touch(layout.use(song, cord));
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
    int end = rig.endOfModule(module);
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
    paths.touchSocket(socket, column);
  }
}
