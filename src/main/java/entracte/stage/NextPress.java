package entracte.stage;

import entracte.cue.GearSends;
import java.util.List;

/** What the next press will do, so that a foot never treads into the unknown. */
final class NextPress {
  private NextPress() {}

  private static final String IN_MENU = "next: a line down; hold or Enter: take it; Escape: close";
  private static final String IN_MENU_SHORT = "next: line down; hold: take; Esc: close";
  private static final String SENDS = ", gear is sent";

  /** In so many cells; where it is too long a title gives way, and never that gear is sent. */
  static String says(Show show, Night night, int cells) {
    String whole = says(show, night);
    if (Cells.of(whole) <= cells) {
      return whole;
    }
    if (night.menuOpen()) {
      return IN_MENU_SHORT;
    }
    String tail = whole.endsWith(SENDS) ? SENDS : "";
    String head = whole.substring(0, whole.length() - tail.length());
    return Cells.cut(head.replace("changeover to ", "to "), cells - Cells.of(tail)) + tail;
  }

  private static String says(Show show, Night night) {
    State now = night.now();
    if (now.menu().isPresent()) {
      return IN_MENU;
    }
    return "next: "
        + switch (now.phase()) {
          case WAITING -> "nothing yet";
          case CHANGEOVER -> changeover(show, now);
          case SONG -> song(show, now);
          case PAUSE -> "changeover to the encore " + title(show, now, now.at() + 1);
          case END -> "nothing";
        };
  }

  private static String changeover(Show show, State now) {
    if (now.way().isEmpty()) {
      return now.waiting() ? "nothing until the plan is there" : "nothing; open the menu";
    }
    if (now.current().isPresent()) {
      return "this move is done";
    }
    boolean sends = !song(show, now, now.at()).sends().song().isEmpty();
    return title(show, now, now.at()) + " begins" + (sends ? SENDS : "");
  }

  private static String song(Show show, State now) {
    List<GearSends.Section> sections = song(show, now, now.at()).sends().sections();
    if (now.section() < sections.size()) {
      return sections.get(now.section()).name() + SENDS;
    }
    if (now.at() + 1 >= now.order().size()) {
      return "end of the set";
    }
    ShowSong coming = song(show, now, now.at() + 1);
    if (coming.encore() && !song(show, now, now.at()).encore()) {
      return "end of the set, before the encore";
    }
    boolean sends = !coming.sends().changeover().isEmpty();
    return "changeover to " + coming.title() + (sends ? SENDS : "");
  }

  private static ShowSong song(Show show, State now, int index) {
    return show.songs().get(now.order().get(index));
  }

  private static String title(Show show, State now, int index) {
    return song(show, now, index).title();
  }
}
