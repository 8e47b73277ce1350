package entracte.plan;

/**
 * What a song that is only partly cast must still cost, beyond what the {@link Ledger} counts so
 * far. Turns and plugs are foretold apart ({@link TurnsAhead}, {@link PlugsAhead}) and added: no
 * move is both. Made when a song is begun, from what the songs before leave behind.
 */
final class Outlook {
  private final TurnsAhead turns;
  private final PlugsAhead plugs;

  Outlook(Ledger ledger, int song, Decisions order) {
    turns = new TurnsAhead(ledger.layout, song, order);
    plugs = new PlugsAhead(ledger.layout, song, order);
  }

  /** The moves that what is decided from {@code place} of the order on must add. */
  int atLeast(Ledger ledger, int place) {
    return turns.atLeast(place) + Math.max(0, plugs.atLeast(place) - ledger.surplus());
  }
}
