package entracte.setlist;

import entracte.rig.Rig;
import java.util.List;
import java.util.Optional;

/**
 * A set: the rig it is played on and its songs in order.
 *
 * @param parking whether a cord may wait in an idle module ({@code park: no} forbids it)
 * @param slot the time on stage
 * @param fallback the song to play when nothing else works, by its name
 */
public record SetList(
    String name, Rig rig, List<Song> songs, boolean parking, Slot slot, Optional<String> fallback) {
  public SetList {
    songs = List.copyOf(songs);
  }

  /** A set without a fallback. */
  public SetList(String name, Rig rig, List<Song> songs, boolean parking, Slot slot) {
    this(name, rig, songs, parking, slot, Optional.empty());
  }

  /** A set that may take as long as it takes. */
  public SetList(String name, Rig rig, List<Song> songs, boolean parking) {
    this(name, rig, songs, parking, Slot.open());
  }
}
