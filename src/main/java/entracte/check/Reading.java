package entracte.check;

import entracte.rig.Module;
import entracte.setlist.Song;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A song as it was read.
 *
 * @param drafts the roles, in the order of the part's
 * @param part what the song needs; empty if it has an error
 */
record Reading(Song song, List<RoleDraft> drafts, Map<RoleDraft, Fit> fits, Optional<Part> part) {
  Reading {
    drafts = List.copyOf(drafts);
  }

  /** The modules that can play a role, or could but for mistakes that are already reported. */
  List<Module> players(RoleDraft draft) {
    return fits.get(draft).players();
  }
}
