package entracte.stage;

/** Where in the show we are. */
public enum Phase {
  /** Before anything is planned. */
  WAITING,
  /** On the way to a song; the first is the set-up. */
  CHANGEOVER,
  /** A song sounds. */
  SONG,
  /** The set is over, and encores are left. */
  PAUSE,
  /** Everything was played. */
  END
}
