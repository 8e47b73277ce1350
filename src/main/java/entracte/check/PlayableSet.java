package entracte.check;

import entracte.rig.Module;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A set that has passed every check, with the names of its patches resolved. */
public final class PlayableSet {
  private final SetList setList;
  private final List<Part> parts;
  private final Optional<Part> drone;

  PlayableSet(SetList setList, List<Part> parts, Optional<Part> drone) {
    this.setList = setList;
    this.parts = List.copyOf(parts);
    this.drone = drone;
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
   * @param order the songs, from 0; on stage one may stand there again
   */
  public PlayableSet inOrder(int... order) {
    List<Song> songs = Arrays.stream(order).mapToObj(setList.songs()::get).toList();
    List<Part> reordered = Arrays.stream(order).mapToObj(parts::get).toList();
    return new PlayableSet(setList.withSongs(songs), reordered, drone);
  }

  /** Whether the song, from 0, can be cast without these modules. */
  public boolean canDoWithout(Set<Module> dead, int song) {
    return parts.get(song).roles().stream()
        .allMatch(role -> role.candidates().stream().anyMatch(each -> !dead.contains(each)));
  }

  /**
   * The same set, in which no role is cast on these modules, and no signal is split by them. Every
   * song must be able to do without them.
   */
  public PlayableSet without(Set<Module> dead) {
    List<List<Module>> rows =
        setList.rig().rows().stream()
            .map(
                row -> row.stream().filter(m -> !dead.contains(m) || m.kind().taps() == 0).toList())
            .toList();
    SetList onRest = setList.withRig(setList.rig().withRows(rows));
    return new PlayableSet(
        onRest,
        parts.stream().map(part -> part.without(dead)).toList(),
        drone.map(part -> part.without(dead)));
  }

  /** The same set with its drone as one more song at the end; without a drone, the set itself. */
  public PlayableSet withDrone() {
    List<Song> songs = new ArrayList<>(setList.songs());
    setList.drone().ifPresent(songs::add);
    List<Part> all = new ArrayList<>(parts);
    drone.ifPresent(all::add);
    return new PlayableSet(setList.withSongs(songs), all, drone);
  }

  /**
   * The same set with its jumpers as they are in the case by now: a role that needs a jumper is
   * cast only where it is known to stand as the role needs it.
   *
   * @param positions by {@code module.jumper}
   */
  public PlayableSet withJumpers(Map<String, String> positions) {
    return new PlayableSet(
        setList,
        parts.stream().map(part -> part.withJumpers(positions)).toList(),
        drone.map(part -> part.withJumpers(positions)));
  }
}
