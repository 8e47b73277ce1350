package entracte.stage;

/**
 * An open menu.
 *
 * @param marked the marked line, from 0, among those that the filter leaves
 * @param filter what was typed to narrow it
 * @param context what was chosen before; for {@link Page#CORD_TO} the first jack
 */
record Menu(Page page, int marked, String filter, String context) {
  enum Page {
    MAIN("What now?"),
    JUMP("Jump to which song?"),
    INSERT("Play which song next?"),
    MOVES("Which moves are done?"),
    CORDS("Which cord is not where it should be?"),
    CORD_FROM("The cord comes from which jack?"),
    CORD_TO("The cord leads to which jack?"),
    MODULES("Which module is dead?"),
    LOST("Lost. What helps?");

    private final String title;

    Page(String title) {
      this.title = title;
    }

    String title() {
      return title;
    }
  }

  static Menu of(Page page) {
    return new Menu(page, 0, "", "");
  }
}
