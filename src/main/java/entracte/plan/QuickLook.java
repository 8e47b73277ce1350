package entracte.plan;

/**
 * How many cords would no longer stay from one song to another if a change were made: a quick look,
 * which tells most hopeless changes before their cost is worked out. It looks at the cords that the
 * change moves and at what lies outside its songs; within them cords mostly move together.
 */
final class QuickLook {
  private final Layout layout;
  private final CordLedger cords;
  private final Edits edits;

  QuickLook(Ledger ledger) {
    layout = ledger.layout;
    cords = layout.cords;
    edits = ledger.edits();
  }

  /** The cords that stay now less those that would, at both ends of the songs of a change. */
  int lost(int from, int to) {
    IntBag moved = edits.cords(layout);
    int lost = 0;
    for (int i = 0; i < moved.size(); i++) {
      int song = edits.songOfCord(moved.get(i));
      int cord = edits.numberOfCord(moved.get(i));
      int use = layout.use(song, cord);
      int source = cords.sourceOf[use];
      int sink = cords.sinkOf[use];
      if (source == CordLedger.NOTHING) {
        continue;
      }
      int newSource = edits.socket(layout, song, 2 * cord);
      int newSink = edits.socket(layout, song, 2 * cord + 1);
      if (isFirst(source, song, from) && isFirst(sink, song, from)) {
        lost += cameFrom(source, sink, from + 1) ? 1 : 0;
        lost -= cameFrom(newSource, newSink, from + 1) ? 1 : 0;
      }
      if (isLast(source, song, to) && isLast(sink, song, to)) {
        lost += cords.goesOn(source, sink, to) ? 1 : 0;
        lost -= cords.goesOn(newSource, newSink, to) ? 1 : 0;
      }
    }
    return lost;
  }

  /** Whether no song of the change needs a jack before this one. */
  private boolean isFirst(int socket, int song, int from) {
    return song == from || columnBefore(socket, song + 1) <= from;
  }

  private boolean isLast(int socket, int song, int to) {
    return song == to - 1 || columnAfter(socket, song + 1) > to;
  }

  private int columnBefore(int socket, int column) {
    int use = cords.previousUse(socket, column);
    return use == CordLedger.NOTHING ? 0 : cords.columnOf[use];
  }

  private int columnAfter(int socket, int column) {
    int use = cords.nextUse(socket, column);
    return use == CordLedger.NOTHING ? cords.columns : cords.columnOf[use];
  }

  /** Whether a cord in these jacks was there before a column, and could wait until then. */
  private boolean cameFrom(int source, int sink, int column) {
    int before = cords.previousUse(source, column);
    return before != CordLedger.NOTHING
        && before == cords.previousUse(sink, column)
        && cords.nextBlocked(sink, cords.columnOf[before]) >= column;
  }
}
