package entracte.plan;

import java.util.Arrays;

/**
 * Which cords every song requires, jack by jack, and from that the windows in which each cord must
 * come and go.
 *
 * <p>A <em>use</em> is one required cord of one column. Between two uses a cord stays if it may be
 * parked in every song between; else it is removed after the first and added again before the
 * second, each within a window of changeovers:
 *
 * <ul>
 *   <li>a removal from the changeover after its use up to the first song in which the cord may not
 *       be: one that needs a jack of it, or in which the module at its sink plays;
 *   <li>an addition from the changeover after the last such song up to its use.
 * </ul>
 *
 * <p>Keeping is never worse than removing and adding again: both cost at most what two pairs could
 * save. A cord that may stay to the end stays.
 */
final class CordLedger {
  static final int NOTHING = -1;

  final int columns;
  final int words;
  private final boolean parking;
  private final RigIndex rig;

  /** The columns in which a jack is needed, by socket. */
  private final long[] used;

  /** The use that needs a jack, by socket and column. */
  private final int[] useAt;

  /** The columns in which a module plays. */
  private final long[] playing;

  /** The columns in which a cord may wait in a channel of a module that plays. */
  private final long[] shut;

  /** The columns in which a jack may yet get a cord that is not known so far, by socket. */
  private final long[] pending;

  /** For how many cords, by socket and column. */
  private final int[] pendingCords;

  final int[] sourceOf;
  final int[] sinkOf;
  final int[] columnOf;

  /** The first changeover in which the cord of a use may be added; 0 if it is there already. */
  final int[] addFrom;

  /** The last changeover in which the cord of a use may be removed; 0 if it stays. */
  final int[] removeTo;

  CordLedger(RigIndex rig, int columns, int uses, boolean parking) {
    this.rig = rig;
    this.columns = columns;
    this.parking = parking;
    words = Songs.words(columns);
    used = new long[rig.sockets.size() * words];
    useAt = new int[rig.sockets.size() * columns];
    playing = new long[rig.modules.size() * words];
    shut = new long[rig.strips() * words];
    pending = new long[rig.sockets.size() * words];
    pendingCords = new int[rig.sockets.size() * columns];
    sourceOf = new int[uses];
    sinkOf = new int[uses];
    columnOf = new int[uses];
    addFrom = new int[uses];
    removeTo = new int[uses];
    Arrays.fill(useAt, NOTHING);
    Arrays.fill(sourceOf, NOTHING);
    Arrays.fill(sinkOf, NOTHING);
  }

  void plug(int use, int column, int source, int sink) {
    sourceOf[use] = source;
    sinkOf[use] = sink;
    columnOf[use] = column;
    occupy(source, column, use);
    occupy(sink, column, use);
  }

  private void occupy(int socket, int column, int use) {
    useAt[socket * columns + column] = use;
    Songs.add(used, socket * words, column);
  }

  void unplug(int use) {
    free(sourceOf[use], columnOf[use]);
    free(sinkOf[use], columnOf[use]);
    sourceOf[use] = NOTHING;
    sinkOf[use] = NOTHING;
    addFrom[use] = 0;
    removeTo[use] = 0;
  }

  private void free(int socket, int column) {
    useAt[socket * columns + column] = NOTHING;
    Songs.drop(used, socket * words, column);
  }

  void setPlaying(int module, int column, boolean plays) {
    if (plays) {
      Songs.add(playing, module * words, column);
    } else {
      Songs.drop(playing, module * words, column);
    }
  }

  boolean isPlaying(int module, int column) {
    return Songs.has(playing, module * words, column);
  }

  void setShut(int strip, int column, boolean isShut) {
    if (isShut) {
      Songs.add(shut, strip * words, column);
    } else {
      Songs.drop(shut, strip * words, column);
    }
  }

  boolean isShut(int strip, int column) {
    return Songs.has(shut, strip * words, column);
  }

  /**
   * Leaves open which cord a jack will have: any may still wait there.
   *
   * @param by 1 for one more cord that may come, -1 for one less
   */
  void changePending(int socket, int column, int by) {
    int count = pendingCords[socket * columns + column] += by;
    if (count > 0) {
      Songs.add(pending, socket * words, column);
    } else {
      Songs.drop(pending, socket * words, column);
    }
  }

  /** The use of a socket in a column, or {@link #NOTHING}. */
  int use(int socket, int column) {
    return useAt[socket * columns + column];
  }

  int nextUse(int socket, int column) {
    int next = Songs.next(used, socket * words, words, column + 1, columns);
    return next == columns ? NOTHING : use(socket, next);
  }

  int previousUse(int socket, int column) {
    int previous = Songs.previous(used, socket * words, column - 1);
    return previous < 0 ? NOTHING : use(socket, previous);
  }

  private int nextNeed(int socket, int column) {
    return Songs.next(used, socket * words, words, column + 1, columns);
  }

  private int previousNeed(int socket, int column) {
    return Songs.previous(used, socket * words, column - 1);
  }

  /** The first column after {@code column} in which no cord may wait at {@code socket}. */
  int nextBlocked(int socket, int column) {
    if (!parking) {
      return column + 1;
    }
    int module = rig.moduleOfSocket[socket] * words;
    int strip = rig.stripOfSocket[socket] * words;
    int from = column + 1;
    for (int word = from >> 6; word < words; word++) {
      long bits = playing[module + word] & ~(shut[strip + word] | pending[socket * words + word]);
      if (word == from >> 6) {
        bits = bits >>> from << from;
      }
      if (bits != 0) {
        return (word << 6) + Long.numberOfTrailingZeros(bits);
      }
    }
    return columns;
  }

  /** The last column before {@code column} in which no cord may wait at {@code socket}. */
  int previousBlocked(int socket, int column) {
    int to = column - 1;
    if (!parking || to < 0) {
      return to;
    }
    int module = rig.moduleOfSocket[socket] * words;
    int strip = rig.stripOfSocket[socket] * words;
    for (int word = to >> 6; word >= 0; word--) {
      long bits = playing[module + word] & ~(shut[strip + word] | pending[socket * words + word]);
      if (word == to >> 6) {
        bits = bits << (63 - (to & 63)) >>> (63 - (to & 63));
      }
      if (bits != 0) {
        return (word << 6) + 63 - Long.numberOfLeadingZeros(bits);
      }
    }
    return NOTHING;
  }

  /** Whether a cord may wait at {@code socket} in a column that does not need it. */
  boolean mayWait(int socket, int column) {
    return nextBlocked(socket, column - 1) != column;
  }

  boolean sameJacks(int use, int other) {
    return (sourceOf[use] == sourceOf[other] && sinkOf[use] == sinkOf[other])
        || (sourceOf[use] == sinkOf[other] && sinkOf[use] == sourceOf[other]);
  }

  /** Works out the window at which the cord of {@code use} comes, or that at which it goes. */
  void findWindow(int use, boolean comes) {
    if (!comes) {
      removeTo[use] = isKept(use) ? 0 : lastRemoval(use);
      return;
    }
    int column = columnOf[use];
    int before = previousUse(sourceOf[use], column);
    boolean there = column == 0 || (before != NOTHING && sameJacks(before, use) && isKept(before));
    addFrom[use] = there ? 0 : firstAddition(use);
  }

  /** The far end of that window; 0 if the cord does not come or go. */
  int window(int use, boolean comes) {
    return comes ? addFrom[use] : removeTo[use];
  }

  void setWindow(int use, boolean comes, int end) {
    if (comes) {
      addFrom[use] = end;
    } else {
      removeTo[use] = end;
    }
  }

  /** Whether the cord of {@code use} stays until its next use. */
  boolean isKept(int use) {
    return goesOn(sourceOf[use], sinkOf[use], columnOf[use]);
  }

  /**
   * Whether two jacks are joined again when either is next needed, and a cord may wait till then.
   */
  boolean goesOn(int source, int sink, int column) {
    int next = nextUse(source, column);
    return next != NOTHING
        && next == nextUse(sink, column)
        && nextBlocked(sink, column) >= columnOf[next];
  }

  private int lastRemoval(int use) {
    int column = columnOf[use];
    int last = Math.min(nextNeed(sourceOf[use], column), nextNeed(sinkOf[use], column));
    last = Math.min(last, nextBlocked(sinkOf[use], column));
    return last == columns ? 0 : last;
  }

  private int firstAddition(int use) {
    int column = columnOf[use];
    int last = Math.max(previousNeed(sourceOf[use], column), previousNeed(sinkOf[use], column));
    last = Math.max(last, previousBlocked(sinkOf[use], column));
    return Math.max(last, 0) + 1;
  }
}
