package entracte.terminal;

import entracte.stage.Input;

/** What comes from the terminal. */
public sealed interface Key {
  /** A key that says something to the stage. */
  record Says(Input input) implements Key {}

  /** A letter; 8 for the key that takes one back. */
  record Letter(int point) implements Key {}

  /** The window has another size. */
  record Resized() implements Key {}

  /** The player wants to leave (Ctrl-C), or the terminal is gone. */
  record Leaves() implements Key {}
}
