package entracte.stage;

/** What a foot or a hand at the keyboard says. */
public enum Input {
  NEXT,
  BACK,
  /** The foot stayed down. */
  HOLD,
  MENU,
  UP,
  DOWN,
  /** Takes the marked line of a menu; without a menu it is next. */
  ENTER,
  SEND_AGAIN,
  QUIET,
  UNDO,
  /** Closes a menu; without a menu it says nothing. */
  CLOSE,
  /** Shows or hides what may be made ready while the song sounds. */
  READY
}
