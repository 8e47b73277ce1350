package entracte.stage;

import java.util.function.Consumer;

/**
 * One line of a menu, and what it does.
 *
 * @param opens whether it only leads to another menu, or out of this one
 */
record Choice(String label, Consumer<Draft> act, boolean opens) {
  Choice(String label, Consumer<Draft> act) {
    this(label, act, false);
  }

  static Choice opens(String label, Menu.Page page) {
    return new Choice(label, draft -> draft.menu = java.util.Optional.of(Menu.of(page)), true);
  }
}
