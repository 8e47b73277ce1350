package entracte.plan.oracle;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.Literal;
import entracte.check.Part.Wanted;
import entracte.rig.Control;
import entracte.rig.Group;
import entracte.rig.Module;
import entracte.rig.Position;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where every knob and switch stands in every song. A knob needs no other figures than the lower
 * ends of the intervals that songs may want of it, the figure that shuts its channel and the one it
 * stands at before: whatever intervals have a figure in common have the largest of their lower
 * ends.
 */
final class ControlVars {
  private final Cp cp;
  private final Universe universe;
  private final Map<Control, Set<Position>> figures = new LinkedHashMap<>();

  /** By control, then song, then position. */
  final Map<Control, List<Map<Position, BoolVar>>> stands = new LinkedHashMap<>();

  /** By control, then song: whether it moves on the way there. */
  final Map<Control, List<BoolVar>> moved = new LinkedHashMap<>();

  /** By song: the channels that are shut in it. */
  final List<Map<Spot, Literal>> shut = new ArrayList<>();

  ControlVars(Cp cp, Universe universe, List<SongVars> songs) {
    this.cp = cp;
    this.universe = universe;
    songs.forEach(this::collect);
    universe.rig().modules().forEach(this::collectClosed);
    figures.forEach((control, all) -> addControl(control, all, songs.size()));
    for (int song = 0; song < songs.size(); song++) {
      want(songs.get(song), song);
      shut.add(new LinkedHashMap<>());
      for (Module module : universe.rig().modules()) {
        addShut(module, songs.get(song), song);
      }
    }
  }

  static Control control(Spot spot, String name) {
    return spot.module().controls().stream()
        .filter(c -> c.group().equals(spot.group()))
        .filter(c -> c.number() == spot.number() && c.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Position lowest(Control control, Wanted wanted) {
    if (wanted instanceof Wanted.Knob knob) {
      double low = Math.max(knob.interval().low(), control.scale().orElseThrow().low());
      return new Position.At(low);
    }
    return new Position.Thrown(((Wanted.Switch) wanted).position());
  }

  private static boolean accepts(Wanted wanted, Position position) {
    if (wanted instanceof Wanted.Knob knob) {
      return knob.interval().contains(((Position.At) position).value());
    }
    return ((Wanted.Switch) wanted).position().equals(((Position.Thrown) position).position());
  }

  private void collect(SongVars song) {
    for (Wanted wanted : song.part.settings()) {
      for (Spot spot : song.spots(wanted.owner()).keySet()) {
        Control control = control(spot, wanted.control());
        add(control, lowest(control, wanted));
      }
    }
  }

  private void collectClosed(Module module) {
    for (Spot spot : channels(module)) {
      spot.group().closed().forEach((name, position) -> add(control(spot, name), position));
    }
  }

  private void add(Control control, Position position) {
    figures.computeIfAbsent(control, c -> new LinkedHashSet<>()).add(position);
    Optional.ofNullable(universe.positionAtStart(control)).ifPresent(figures.get(control)::add);
  }

  private static List<Spot> channels(Module module) {
    List<Spot> spots = new ArrayList<>();
    Optional<Group> group = module.kind().channels().filter(g -> !g.closed().isEmpty());
    for (int number = 1; number <= group.map(Group::count).orElse(0); number++) {
      spots.add(new Spot(module, group.get(), number));
    }
    return spots;
  }

  /**
   * In no position at all, a control stands where nobody knows: from a bare start until it moves.
   */
  private void addControl(Control control, Set<Position> all, int songs) {
    Position start = universe.positionAtStart(control);
    List<Map<Position, BoolVar>> bySong = new ArrayList<>();
    List<BoolVar> moves = new ArrayList<>();
    for (int song = 0; song < songs; song++) {
      Map<Position, BoolVar> byPosition = new LinkedHashMap<>();
      BoolVar move = cp.bool(control + " moves");
      for (Position position : all) {
        BoolVar stands = cp.bool(control + " at " + position);
        byPosition.put(position, stands);
        if (song > 0) {
          cp.atMostSum(stands, List.of(bySong.get(song - 1).get(position), move));
        } else if (!position.equals(start)) {
          cp.atMostSum(stands, List.of(move));
        }
      }
      cp.atMostOne(byPosition.values());
      bySong.add(byPosition);
      moves.add(move);
    }
    stands.put(control, bySong);
    moved.put(control, moves);
  }

  private void want(SongVars song, int index) {
    for (Wanted wanted : song.part.settings()) {
      song.spots(wanted.owner())
          .forEach(
              (spot, here) -> {
                Control control = control(spot, wanted.control());
                List<BoolVar> good = new ArrayList<>();
                stands
                    .get(control)
                    .get(index)
                    .forEach(
                        (position, is) -> {
                          if (accepts(wanted, position)) {
                            good.add(is);
                          }
                        });
                cp.atMostSum(here, good);
              });
    }
  }

  private void addShut(Module module, SongVars song, int index) {
    for (Spot spot : channels(module)) {
      BoolVar isShut = cp.bool("shut " + spot.module() + spot.number());
      spot.group()
          .closed()
          .forEach(
              (name, position) ->
                  cp.implies(isShut, stands.get(control(spot, name)).get(index).get(position)));
      List<Literal> one = new ArrayList<>(song.namers(spot));
      one.add(isShut);
      cp.atMostOne(one);
      shut.get(index).put(spot, isShut);
    }
  }
}
