package entracte.plan;

/**
 * How many plugs the cords of a song must add whose two modules are not both known yet. Such a cord
 * costs nothing only if it may be there already: because two modules that could play its two roles
 * have had that very cord in a song before, or because it could have been put in before the first
 * changeover. If no modules that are left could do so, it will be added, and that is two moves.
 *
 * <p>A plan of A additions has at least 2 A moves of plugs, whatever is removed; by as much as the
 * moves counted so far surpass that, an addition may turn out to be free ({@link Ledger#surplus}).
 * Where moves have prices, that does not hold, and nothing is foretold. Modules are numbered by
 * bits, so that rigs of more than 64 are not foretold either.
 */
final class PlugsAhead {
  private static final int MOVES = 2;

  private final Layout layout;
  private final RigIndex rig;
  private final CordLedger cords;
  private final Shape shape;
  private final int song;

  /** The place in the order at which the later of a cord's two jacks is known. */
  private final int[] knownAt;

  private final int[] placeOf;

  /** For each cord and module of its source: the modules of the sink that let it be free. */
  private final long[][] free;

  PlugsAhead(Layout layout, int song, Decisions order) {
    this.layout = layout;
    this.song = song;
    rig = layout.rig;
    cords = layout.cords;
    shape = layout.shape(song);
    placeOf = order.placeOfRole;
    boolean foretells = layout.problem.prices.areEven && rig.modules.size() <= Long.SIZE;
    knownAt = new int[foretells ? shape.cords() : 0];
    free = new long[knownAt.length][rig.modules.size()];
    for (int cord = 0; cord < knownAt.length; cord++) {
      int source = shape.roleOfEnd[2 * cord];
      int sink = shape.roleOfEnd[2 * cord + 1];
      knownAt[cord] = Math.max(order.known(shape, 2 * cord), order.known(shape, 2 * cord + 1));
      for (int a : shape.candidates[source]) {
        for (int b : shape.candidates[sink]) {
          if ((source == sink) == (a == b) && mayBeFree(cord, a, b)) {
            free[cord][a] |= 1L << b;
          }
        }
      }
    }
  }

  /** Whether, on any strips of the two modules, the cord may be there without a move. */
  private boolean mayBeFree(int cord, int a, int b) {
    int[] sources = StripChoice.sockets(rig, shape, 2 * cord, a);
    int[] sinks = StripChoice.sockets(rig, shape, 2 * cord + 1, b);
    for (int source : sources) {
      for (int sink : sinks) {
        if (source != sink && mayBeFree(source, sink)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean mayBeFree(int source, int sink) {
    int column = song + 1;
    int atSource = cords.previousUse(source, column);
    int atSink = cords.previousUse(sink, column);
    boolean same = atSource == atSink && atSink != CordLedger.NOTHING;
    return (same && mayStay(atSink, column))
        || (mayPrecedeAll(sink, column) && isBeforeAll(atSource) && isBeforeAll(atSink));
  }

  private boolean isBeforeAll(int use) {
    return use == CordLedger.NOTHING || cords.columnOf[use] < layout.problem.weights.setUpColumn();
  }

  /** Whether a cord could have waited in a jack since before the first changeover. */
  private boolean mayPrecedeAll(int sink, int column) {
    int setUp = layout.problem.weights.setUpColumn();
    return setUp > 0
        && (mayBeShut(sink) || Math.max(cords.previousBlocked(sink, column), 0) < setUp);
  }

  private boolean mayStay(int use, int column) {
    int sink = cords.sinkOf[use];
    return mayBeShut(sink) || cords.nextBlocked(sink, cords.columnOf[use]) >= column;
  }

  private boolean mayBeShut(int socket) {
    return rig.closedControls[rig.stripOfSocket[socket]].length > 0;
  }

  /** The moves that adding the cords must take that are known only from {@code place} on. */
  int atLeast(int place) {
    long taken = 0;
    for (int module : layout.casting.module[song]) {
      taken |= module == Casting.UNCAST ? 0 : 1L << module;
    }
    int adds = 0;
    for (int cord = 0; cord < knownAt.length; cord++) {
      if (knownAt[cord] >= place && !mayBeFree(cord, place, taken)) {
        adds++;
      }
    }
    return MOVES * adds;
  }

  private boolean mayBeFree(int cord, int place, long taken) {
    int source = shape.roleOfEnd[2 * cord];
    int sink = shape.roleOfEnd[2 * cord + 1];
    int[] cast = layout.casting.module[song];
    long sinks = placeOf[sink] < place ? 1L << cast[sink] : ~taken;
    if (placeOf[source] < place) {
      return (free[cord][cast[source]] & sinks) != 0;
    }
    for (int a : shape.candidates[source]) {
      if ((taken >> a & 1) == 0 && (free[cord][a] & sinks) != 0) {
        return true;
      }
    }
    return false;
  }
}
