package entracte.check;

import entracte.setlist.Patch;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;

/**
 * Names can be read at a glance. Sheets and screens cut or wrap a long one, but one that fills a
 * page is a slip: a paragraph that was pasted where a title belongs.
 */
final class LongNames {
  private static final int MOST = 200;

  private final Findings findings;

  LongNames(Findings findings) {
    this.findings = findings;
  }

  void check(SetList set) {
    check(set, "the name of the set", set.name(), "");
    check(set.rig(), "the name of the rig", set.rig().name(), "");
    set.rig().kinds().forEach(kind -> check(kind, "the name of a kind", kind.name(), ""));
    set.rig().modules().forEach(m -> check(m, "the name of a module", m.name(), ""));
    Set<Patch> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Song song : set.songs()) {
      check(
          song, "the title of a song", song.name(), " What else there is to say goes into notes.");
      if (seen.add(song.patch())) {
        check(song.patch());
      }
    }
  }

  private void check(Patch patch) {
    check(patch, "the name of a patch", patch.name(), "");
    patch.roles().forEach(role -> check(role, "the name of a role", role.name(), ""));
  }

  private void check(Object piece, String what, String name, String more) {
    int letters = name.codePointCount(0, name.length());
    if (letters > MOST) {
      findings.error(
          piece,
          what + " has " + letters + " letters",
          "Give it one of at most " + MOST + "." + more);
    }
  }
}
