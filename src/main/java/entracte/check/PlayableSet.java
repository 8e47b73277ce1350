package entracte.check;

import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

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

  /** The orders of the songs that the set's rules permit. */
  public PermittedOrders permittedOrders() {
    return new PermittedOrders(setList, setList.order());
  }

  /** The order of the songs, from 0, that comes first among those permitted; empty if none does. */
  public Optional<int[]> somePermittedOrder() {
    return new OrderSeeker(permittedOrders()).find();
  }

  /**
   * The same set with its songs in another order, or with some of them only.
   *
   * @param order the songs, from 0, each at most once
   */
  public PlayableSet inOrder(int... order) {
    List<Song> songs = Arrays.stream(order).mapToObj(setList.songs()::get).toList();
    List<Part> reordered = Arrays.stream(order).mapToObj(parts::get).toList();
    return new PlayableSet(setList.withSongs(songs), reordered);
  }
}
