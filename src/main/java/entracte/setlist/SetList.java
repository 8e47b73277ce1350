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
 * @param order what another order of the songs would have to keep to
 * @param drone a patch that can sound by itself while whoever is lost finds the way back, as a song
 *     outside the order
 * @param pitch what it is tuned by
 */
public record SetList(
    String name,
    Rig rig,
    List<Song> songs,
    boolean parking,
    Slot slot,
    Optional<String> fallback,
    List<OrderRule> order,
    Optional<Song> drone,
    PitchStandard pitch) {
  public SetList {
    songs = List.copyOf(songs);
    order = List.copyOf(order);
  }

  /** Songs in a row, of which nothing more is said. */
  public SetList(String name, Rig rig, List<Song> songs, boolean parking) {
    this(
        name,
        rig,
        songs,
        parking,
        Slot.open(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        PitchStandard.usual());
  }

  /** The same set in so much time. */
  public SetList withSlot(Slot other) {
    return new SetList(name, rig, songs, parking, other, fallback, order, drone, pitch);
  }

  /** The same set whose order has to keep to rules. */
  public SetList withOrder(List<OrderRule> rules) {
    return new SetList(name, rig, songs, parking, slot, fallback, rules, drone, pitch);
  }

  /** The same set with something that sounds by itself. */
  public SetList withDrone(Song other) {
    return new SetList(name, rig, songs, parking, slot, fallback, order, Optional.of(other), pitch);
  }

  /** The same set with other songs, or its own in another order; what names a lost song goes. */
  public SetList withSongs(List<Song> others) {
    List<String> names = others.stream().map(Song::name).toList();
    List<OrderRule> kept = order.stream().filter(r -> names.containsAll(r.songs())).toList();
    Optional<String> still = fallback.filter(names::contains);
    return new SetList(name, rig, others, parking, slot, still, kept, drone, pitch);
  }

  /** The same set on another rig. */
  public SetList withRig(Rig other) {
    return new SetList(name, other, songs, parking, slot, fallback, order, drone, pitch);
  }
}
