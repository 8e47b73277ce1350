package entracte.setlist;

import entracte.rig.Rig;
import java.util.List;

/**
 * A set: the rig it is played on and its songs in order.
 *
 * @param parking whether a cord may wait in an idle module ({@code park: no} forbids it)
 * @param slot the time on stage
 */
public record SetList(String name, Rig rig, List<Song> songs, boolean parking, Slot slot) {
  public SetList {
    songs = List.copyOf(songs);
  }

  /** A set that may take as long as it takes. */
  public SetList(String name, Rig rig, List<Song> songs, boolean parking) {
    this(name, rig, songs, parking, Slot.open());
  }
}
