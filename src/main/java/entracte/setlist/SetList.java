package entracte.setlist;

import entracte.rig.Rig;
import java.util.List;

/**
 * A set: the rig it is played on and its songs in order.
 *
 * @param parking whether a cord may wait in an idle module ({@code park: no} forbids it)
 */
public record SetList(String name, Rig rig, List<Song> songs, boolean parking) {
  public SetList {
    songs = List.copyOf(songs);
  }
}
