package entracte.check;

import entracte.setlist.SetList;
import java.util.List;

/** A set for tests that make their plans by hand and so need no resolved names. */
public final class HandMadeSet {
  private HandMadeSet() {}

  public static PlayableSet of(SetList setList) {
    return new PlayableSet(setList, List.of(), java.util.Optional.empty());
  }
}
