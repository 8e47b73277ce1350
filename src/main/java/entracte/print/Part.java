package entracte.print;

import java.util.EnumSet;
import java.util.Set;

/** The papers of a set; each can be printed by itself. */
public enum Part {
  ORDER("order", "Running order"),
  SET_UP("set-up", "Set-up"),
  CHANGEOVERS("changeovers", "Changeovers"),
  PATCHES("patches", "Patches"),
  PACKING("packing", "Packing"),
  COUNT_IN("count-in", "Counting in"),
  ENGINEER("engineer", "For the engineer");

  private final String word;
  private final String title;

  Part(String word, String title) {
    this.word = word;
    this.title = title;
  }

  /** As it is typed. */
  public String word() {
    return word;
  }

  /** As it stands among the bookmarks. */
  String title() {
    return title;
  }

  /** Whether the case is drawn on it. */
  public boolean hasPictures() {
    return this == SET_UP || this == CHANGEOVERS;
  }

  public static Set<Part> all() {
    return EnumSet.allOf(Part.class);
  }
}
