package entracte.plan;

import java.util.Arrays;

/**
 * Keeps the three ledgers in step with a casting: puts a role of a song onto its module and takes
 * it off again, and says which jacks and modules that touches.
 */
final class Layout {
  final Problem problem;
  final RigIndex rig;
  final Casting casting;
  final CordLedger cords;
  final ControlLedger controls;
  final JumperLedger jumpers;

  /** The first use of each column; uses of one column follow each other. */
  final int[] firstUse;

  private final boolean[] shutForFree;

  private final LengthCount lengths;

  Layout(Problem problem, Casting casting) {
    this(problem, casting, new boolean[problem.songs()], problem.parking);
  }

  /**
   * @param shutForFree the songs in which a channel that is shut needs no control turned: no real
   *     rig is so, but what it costs is a lower bound
   * @param parking whether cords may be parked, be it only for the sake of a bound
   */
  Layout(Problem problem, Casting casting, boolean[] shutForFree, boolean parking) {
    this.problem = problem;
    this.shutForFree = shutForFree;
    this.casting = casting;
    rig = problem.rig;
    firstUse = new int[problem.columns() + 1];
    firstUse[1] = problem.startCords.length;
    for (int s = 0; s < problem.songs(); s++) {
      int most = Arrays.stream(problem.shapes[s]).mapToInt(Shape::cords).max().orElse(0);
      firstUse[s + 2] = firstUse[s + 1] + most;
    }
    cords = new CordLedger(rig, problem.columns(), firstUse[problem.columns()], parking);
    controls = new ControlLedger(problem.startPosition, problem.columns(), problem.weights);
    jumpers = new JumperLedger(rig);
    lengths = new LengthCount(problem);
    for (int use = 0; use < problem.startCords.length; use++) {
      cords.plug(use, 0, problem.startCords[use][0], problem.startCords[use][1]);
    }
    for (int s = 0; s < problem.songs(); s++) {
      for (int role = 0; role < shape(s).roles(); role++) {
        seat(s, role);
      }
      for (int cord = 0; cord < shape(s).cords(); cord++) {
        plug(s, cord);
      }
    }
  }

  Shape shape(int song) {
    return problem.shape(casting, song);
  }

  int use(int song, int cord) {
    return firstUse[song + 1] + cord;
  }

  /** The socket of an end, or -1 while its role has no module or its strip is not chosen. */
  int socket(int song, int end) {
    Shape shape = shape(song);
    int module = casting.module[song][shape.roleOfEnd[end]];
    if (module == Casting.UNCAST) {
      return CordLedger.NOTHING;
    }
    int kind = rig.kindOfModule[module];
    int strip = physicalStrip(song, module, shape.stripOfEnd[end]);
    if (strip == CordLedger.NOTHING) {
      return CordLedger.NOTHING;
    }
    return rig.firstSocketOfStrip[strip] + shape.jackOfEnd[end][kind];
  }

  private int physicalStrip(int song, int module, int strip) {
    return strip < 0 ? rig.firstStrip[module][0] : casting.strip[song][strip];
  }

  /** Plugs a cord, once both its jacks are known. */
  void plug(int song, int cord) {
    int source = socket(song, 2 * cord);
    int sink = socket(song, 2 * cord + 1);
    if (source == CordLedger.NOTHING || sink == CordLedger.NOTHING) {
      changePending(song, cord, 1);
      return;
    }
    cords.plug(use(song, cord), song + 1, source, sink);
    lengths.plug(song, source, sink);
  }

  void unplug(int song, int cord) {
    int use = use(song, cord);
    if (cords.sourceOf[use] == CordLedger.NOTHING) {
      changePending(song, cord, -1);
      return;
    }
    lengths.unplug(song, cords.sourceOf[use], cords.sinkOf[use]);
    cords.unplug(use);
  }

  private void changePending(int song, int cord, int by) {
    for (int end = 2 * cord; end <= 2 * cord + 1; end++) {
      int module = casting.module[song][shape(song).roleOfEnd[end]];
      for (int socket : sockets(song, end, module)) {
        cords.changePending(socket, song + 1, by);
      }
    }
  }

  /** The sockets that an end may get: one, all of a group, or, without a module, none. */
  private int[] sockets(int song, int end, int module) {
    if (module == Casting.UNCAST) {
      return new int[0];
    }
    int socket = socket(song, end);
    return socket != CordLedger.NOTHING
        ? new int[] {socket}
        : StripChoice.sockets(rig, shape(song), end, module);
  }

  /** Puts a role onto its module: the module plays, its controls and jumpers are wanted. */
  void seat(int song, int role) {
    int module = casting.module[song][role];
    if (module == Casting.UNCAST) {
      return;
    }
    cords.setPlaying(module, song + 1, true);
    wantControls(song, role, module, true);
    jumpers.count(shape(song), role, module, 1);
    shutStrips(song, module, true);
  }

  /** Takes a role off its module. */
  void unseat(int song, int role) {
    int module = casting.module[song][role];
    if (module == Casting.UNCAST) {
      return;
    }
    shutStrips(song, module, false);
    cords.setPlaying(module, song + 1, false);
    wantControls(song, role, module, false);
    jumpers.count(shape(song), role, module, -1);
  }

  private void wantControls(int song, int role, int module, boolean wanted) {
    Shape.Wants wants = shape(song).wants;
    int kind = rig.kindOfModule[module];
    for (int w : wants.ofRole()[role]) {
      int strip = physicalStrip(song, module, wants.strip()[w]);
      if (strip == CordLedger.NOTHING) {
        continue;
      }
      int control = rig.firstControlOfStrip[strip] + wants.controlOf()[w][kind];
      if (wanted) {
        controls.want(
            control,
            song + 1,
            wants.low()[w][kind],
            wants.high()[w][kind],
            wants.nominal()[w][kind]);
      } else {
        controls.leave(control, song + 1);
      }
    }
  }

  /** Puts into effect, or out of it, what the casting shuts in a module that plays. */
  private void shutStrips(int song, int module, boolean shut) {
    for (int group = 1; group < rig.firstStrip[module].length; group++) {
      int first = rig.firstStrip[module][group];
      if (rig.closedControls[first].length == 0) {
        continue;
      }
      int count = rig.modules.get(module).kind().groups().get(group).count();
      for (int strip = first; strip < first + count; strip++) {
        if (casting.shut[strip][song] && !isNamed(song, strip)) {
          setShut(song, strip, shut);
        }
      }
    }
  }

  /** Whether some role of the song has the module. */
  boolean isCast(int song, int module) {
    for (int taken : casting.module[song]) {
      if (taken == module) {
        return true;
      }
    }
    return false;
  }

  /** Whether some role of the song has the strip. */
  boolean isNamed(int song, int strip) {
    for (int taken : casting.strip[song]) {
      if (taken == strip) {
        return true;
      }
    }
    return false;
  }

  private void setShut(int song, int strip, boolean shut) {
    cords.setShut(strip, song + 1, shut);
    for (int i = 0; i < rig.closedControls[strip].length && !shutForFree[song]; i++) {
      int control = rig.closedControls[strip][i];
      if (shut) {
        double at = rig.closedValues[strip][i];
        controls.want(control, song + 1, at, at, at);
      } else {
        controls.leave(control, song + 1);
      }
    }
  }

  /** Shuts or opens a channel in one song. */
  void toggleShut(int song, int strip) {
    boolean inEffect = cords.isPlaying(rig.moduleOfStrip[strip], song + 1) && !isNamed(song, strip);
    casting.shut[strip][song] = !casting.shut[strip][song];
    if (inEffect) {
      setShut(song, strip, casting.shut[strip][song]);
    }
  }

  /** What the turns or flips of one control cost. */
  long controlCost(int control) {
    return controls.cost(control) * problem.prices.set[control];
  }

  /** What all turns and flips cost. */
  long controlsCost() {
    long cost = 0;
    for (int control = 0; control < problem.rig.controls.size(); control++) {
      cost += controlCost(control);
    }
    return cost;
  }

  /** What makes the casting impossible: jumpers wanted two ways, and cords too short or too few. */
  int faults() {
    return jumpers.conflicts() + lengths.missing();
  }

  /**
   * Whether it is impossible with any modules in place of those that {@link Alike} takes for the
   * same: these differ in how many cords of each length they take.
   */
  boolean isHopeless() {
    return jumpers.conflicts() + lengths.tooFar() > 0;
  }
}
