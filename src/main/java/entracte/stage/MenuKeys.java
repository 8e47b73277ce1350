package entracte.stage;

import java.util.List;
import java.util.Optional;

/** A menu and the keys: a foot alone can use it. Press: one line down. Hold: take the line. */
final class MenuKeys {
  private MenuKeys() {}

  /** Takes an input; false if it is none of the menu's. */
  static boolean take(Draft draft, Night night, Input input) {
    Menu menu = draft.menu.orElseThrow();
    List<Choice> choices = Choices.of(draft, night, menu);
    switch (input) {
      case NEXT, DOWN -> mark(draft, menu, menu.marked() + 1, choices.size());
      case UP -> mark(draft, menu, menu.marked() - 1, choices.size());
      case BACK, MENU, UNDO, CLOSE -> draft.menu = Optional.empty();
      case ENTER, HOLD -> {
        draft.menu = Optional.empty();
        if (!choices.isEmpty()) {
          Choice chosen = choices.get(menu.marked());
          draft.label = chosen.opens() ? "" : chosen.label();
          chosen.act().accept(draft);
        }
      }
      case SEND_AGAIN, QUIET, READY -> {
        return false;
      }
    }
    return true;
  }

  private static void mark(Draft draft, Menu menu, int line, int lines) {
    int marked = lines == 0 ? 0 : Math.floorMod(line, lines);
    draft.menu = Optional.of(new Menu(menu.page(), marked, menu.filter(), menu.context()));
  }
}
