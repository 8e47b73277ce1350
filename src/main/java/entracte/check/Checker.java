package entracte.check;

import entracte.finding.Places;
import entracte.rig.Rig;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The front door of this package: checks a set against every rule. */
public final class Checker {
  private Checker() {}

  /** Checks {@code setList}; findings stand where {@code places} knows their pieces to be. */
  public static Checked check(SetList setList, Places places) {
    Findings findings = new Findings(places);
    Rig rig = setList.rig();
    Resolver resolver = new Resolver(new RigIndex(rig), findings);
    List<Part> parts = new ArrayList<>();
    for (Song song : setList.songs()) {
      resolver.resolve(song).ifPresent(resolved -> parts.add(resolved.part()));
    }
    return new Checked(
        findings.list(),
        findings.errors() > 0 ? Optional.empty() : Optional.of(new PlayableSet(setList, parts)));
  }
}
