package entracte.stage;

import java.util.List;

/** An open menu: its question, and the lines around the marked one. */
final class MenuView {
  private MenuView() {}

  static void draw(Area body, Show show, Night night, Menu menu, long nowMillis) {
    String filter = menu.filter().isEmpty() ? "" : "  (" + menu.filter() + ")";
    body.line(menu.page().title() + filter, Style.STRONG);
    List<Choice> choices = Choices.of(new Draft(show, night.now(), nowMillis), night, menu);
    if (choices.isEmpty()) {
      body.line("nothing that fits", Style.TEXT);
    }
    int rows = body.left();
    int first = Math.max(0, Math.min(menu.marked() - rows / 2, choices.size() - rows));
    for (int line = first; line < choices.size() && body.left() > 0; line++) {
      String label = choices.get(line).label();
      if (line == menu.marked()) {
        body.marked("* " + label);
      } else {
        body.line("  " + label, Style.TEXT);
      }
    }
  }
}
