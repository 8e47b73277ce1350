package entracte.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Writes down, as figures, all that the songs cast so far leave behind that songs to come can tell:
 * two pasts with the same figures cost the same from here on, whatever they have cost. The stock
 * has no end, and no position is known before the show.
 *
 * <ul>
 *   <li>Of a control: the interval in which it can still have been standing since its last turn.
 *   <li>Of a cord that may still be in place: its two sockets, and from when on it may be removed.
 *   <li>Of any other socket: from when on a cord to it may be added. As no cord of a song to come
 *       can be added before the earliest of these times, whatever lies before it is all one.
 *   <li>Of a removal with which such an addition may pair: the whole path of events it ends, with
 *       what it saves that a plug stays.
 *   <li>Of a channel that can be shut: in which songs since it was last used it could still be.
 * </ul>
 *
 * <p>Modules, and strips of a module, that are alike for the songs to come are put in an order of
 * their contents, so that mirror images have the same figures. That order comes from hashing, but
 * the figures are written out in full: an unlucky hash can only hide that two pasts are the same.
 */
final class Past {
  private static final int ROUNDS = 3;
  private static final int FRESH = 0;
  private static final int IDLE = 1;
  private static final int OPEN = 2;
  private static final int HELD = 3;
  private static final int NO_LINK = -1;

  private final Problem problem;
  private final RigIndex rig;
  private final Layout layout;
  private final CordLedger cords;
  private final PlugPaths paths;
  private final Coming[] coming;
  private final Map<ControlLedger.Run, Integer> runs = new HashMap<>();
  private final int[] start;
  private final PastOrder order;
  private int[] figures = new int[256];
  private int[] links = new int[256];
  private int size;
  private int song;
  private int now;
  private int earliest;
  private Coming then;

  Past(Problem problem, Layout layout) {
    this.problem = problem;
    this.layout = layout;
    rig = problem.rig;
    cords = layout.cords;
    paths = new PlugPaths(cords, problem);
    coming = new Coming[problem.songs()];
    start = new int[rig.strips() + 1];
    order = new PastOrder(rig);
  }

  /** Long sets are seldom followed far, so that it is found only where it is asked for. */
  private Coming coming(int song) {
    if (coming[song] == null) {
      coming[song] = new Coming(problem, song);
    }
    return coming[song];
  }

  /** The figures before a place of a song's decisions, all songs before it being cast. */
  int[] before(int song, int place) {
    this.song = song;
    now = place == 0 ? song : song + 1;
    then = coming(song);
    earliest = earliest();
    size = 0;
    for (int strip = 0; strip < rig.strips(); strip++) {
      start[strip] = size;
      write(strip);
    }
    start[rig.strips()] = size;
    order.find(then, figures, links, start, ROUNDS);
    return order.written(song, layout.casting.shape[song], place, earliest);
  }

  /** The column after which the first cord of a song to come may be added. */
  private int earliest() {
    int least = now;
    for (int socket = 0; socket < rig.sockets.size() && least > 0; socket++) {
      if (then.socket[socket] && !rig.outSocket[socket]) {
        least = Math.min(least, mayShut(socket) ? lastUse(socket) : lastAway(socket));
      }
    }
    return least;
  }

  private boolean mayShut(int socket) {
    return rig.closedControls[rig.stripOfSocket[socket]].length > 0;
  }

  private int lastUse(int socket) {
    int use = cords.previousUse(socket, now + 1);
    return use == CordLedger.NOTHING ? 0 : cords.columnOf[use];
  }

  /** The last column in which a socket was used or no cord may have waited there. */
  private int lastAway(int socket) {
    return Math.max(lastUse(socket), cords.previousBlocked(socket, now + 1));
  }

  private void write(int strip) {
    int module = rig.moduleOfStrip[strip];
    if (strip == rig.firstStrip[module][0]) {
      int jumpers = rig.modules.get(module).kind().jumpers().size();
      for (int jumper = 0; jumper < jumpers; jumper++) {
        put(layout.jumpers.position(module, jumper), NO_LINK);
      }
    }
    put(now > song ? placeOf(strip) : 0, NO_LINK);
    int upTo = now;
    if (rig.closedControls[strip].length > 0) {
      upTo = writeSinceUse(strip);
    }
    for (int c = rig.firstControlOfStrip[strip]; c < rig.firstControlOfStrip[strip + 1]; c++) {
      if (then.control[c]) {
        put(run(c, upTo), NO_LINK);
      }
    }
    for (int s = rig.firstSocketOfStrip[strip]; s < rig.firstSocketOfStrip[strip + 1]; s++) {
      writeSocket(s);
    }
  }

  /**
   * What the song being cast has made of a strip: a number for each role, and strip, that it has.
   */
  private int placeOf(int strip) {
    int[] strips = layout.casting.strip[song];
    for (int q = 0; q < strips.length; q++) {
      if (strips[q] == strip) {
        return 1 + q;
      }
    }
    int[] modules = layout.casting.module[song];
    for (int role = 0; role < modules.length; role++) {
      if (modules[role] == rig.moduleOfStrip[strip]) {
        return 1 + strips.length + role;
      }
    }
    return 0;
  }

  /** Writes when a channel played and was shut since it was used; returns when that was. */
  private int writeSinceUse(int strip) {
    int used = now;
    while (used > 0 && !layout.isNamed(used - 1, strip)) {
      used--;
    }
    put(used, NO_LINK);
    for (int column = used + 1; column <= now; column++) {
      boolean plays = cords.isPlaying(rig.moduleOfStrip[strip], column);
      put((plays ? 1 : 0) + (cords.isShut(strip, column) ? 2 : 0), NO_LINK);
    }
    return used;
  }

  /** The number of the interval that a control has been in since its last turn. */
  private int run(int control, int upTo) {
    ControlLedger.Run run = layout.controls.lastRun(control, upTo);
    if (run.isFresh()) {
      return FRESH;
    }
    return runs.computeIfAbsent(run, r -> runs.size() + 1);
  }

  private void writeSocket(int socket) {
    int use = cords.previousUse(socket, now + 1);
    if (use != CordLedger.NOTHING && cords.removeTo[use] == 0) {
      int other = cords.sourceOf[use] == socket ? cords.sinkOf[use] : cords.sourceOf[use];
      put(HELD, NO_LINK);
      put(cords.sinkOf[use] == socket ? 1 : 0, NO_LINK);
      put(since(cords.columnOf[use]), NO_LINK);
      put(0, other);
    } else if (then.socket[socket]) {
      boolean open = use != CordLedger.NOTHING && mayPair(use, socket);
      put(open ? OPEN : IDLE, NO_LINK);
      put(since(lastUse(socket)), NO_LINK);
      if (!rig.outSocket[socket] && !mayShut(socket)) {
        put(since(lastAway(socket)), NO_LINK);
      }
      if (open) {
        writePath(PlugPaths.removal(use), socket);
      }
    } else {
      put(IDLE, NO_LINK);
    }
  }

  /** A column, or the earliest that matters if it is before that; the start state is apart. */
  private int since(int column) {
    return column == 0 ? 0 : Math.max(column, earliest);
  }

  /** Whether the removal of a cord may pair, at a socket, with an addition to come. */
  private boolean mayPair(int use, int socket) {
    int from = earliest;
    if (!rig.outSocket[socket] && !rig.tapSocket[socket] && !mayShut(socket)) {
      from = Math.max(from, lastAway(socket));
    }
    return Math.max(from, cords.columnOf[use]) < cords.removeTo[use];
  }

  /** Writes the path that a removal ends, from that end to the other. */
  private void writePath(int removal, int socket) {
    int length = paths.walk(removal);
    boolean forward = paths.event(0) == removal && paths.joint(0) == socket;
    put(length, NO_LINK);
    for (int i = 0; i < length; i++) {
      int event = paths.event(forward ? i : length - 1 - i);
      put(PlugPaths.isAddition(event) ? 1 : 0, NO_LINK);
      put(paths.earliest(event), NO_LINK);
      put(paths.latest(event), NO_LINK);
      put(i == 0 ? 0 : problem.prices.stay(paths.joint(forward ? i : length - i)), NO_LINK);
    }
    int far = paths.event(forward ? length - 1 : 0);
    int end = paths.joint(forward ? length : 0);
    boolean isLast = cords.previousUse(end, now + 1) == PlugPaths.useOf(far);
    put(isLast ? 1 : 0, isLast ? end : NO_LINK);
  }

  private void put(int figure, int link) {
    if (size == figures.length) {
      figures = Arrays.copyOf(figures, 2 * size);
      links = Arrays.copyOf(links, 2 * size);
    }
    figures[size] = figure;
    links[size++] = link;
  }
}
