package entracte.check;

import entracte.setlist.SetList;
import java.util.List;

/** A set that has passed every check, with the names of its patches resolved. */
public final class PlayableSet {
  private final SetList setList;
  private final List<Part> parts;

  PlayableSet(SetList setList, List<Part> parts) {
    this.setList = setList;
    this.parts = List.copyOf(parts);
  }

  public SetList setList() {
    return setList;
  }

  /** What each song needs, in the order of the set. */
  public List<Part> parts() {
    return parts;
  }
}
