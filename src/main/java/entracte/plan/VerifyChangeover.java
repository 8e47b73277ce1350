package entracte.plan;

import entracte.rig.Control;
import entracte.rig.Position;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Replays the actions of one changeover: they lead from the state before to the state after, and
 * take no move more than the two states need.
 */
final class VerifyChangeover {
  private final Consumer<String> complain;
  private final Set<Wire> wires;
  private final Map<Control, Position> positions;
  private final Set<Control> touched = new HashSet<>();

  private VerifyChangeover(RigNow before, Consumer<String> complain) {
    this.wires = new HashSet<>(before.wires());
    this.positions = new HashMap<>(before.positions());
    this.complain = complain;
  }

  /**
   * @param aim with {@link Aim#FASTEST}, more moves than needed are right, for they may take less
   *     time
   */
  static void check(
      RigNow before, Changeover changeover, RigNow after, Aim aim, Consumer<String> complain) {
    VerifyChangeover replay = new VerifyChangeover(before, complain);
    changeover.actions().forEach(replay::pull);
    changeover.actions().forEach(replay::plug);
    changeover.actions().forEach(replay::set);
    replay.compare(after);
    int needed = movesBetween(before, after);
    boolean asNeeded =
        aim == Aim.FASTEST ? changeover.moves() >= needed : changeover.moves() == needed;
    if (!asNeeded) {
      complain.accept("%d moves, where %d do".formatted(changeover.moves(), needed));
    }
  }

  /** 2A + 2R - 2S + turns + flips. */
  private static int movesBetween(RigNow before, RigNow after) {
    List<Wire> added = without(after.wires(), before.wires());
    List<Wire> removed = without(before.wires(), after.wires());
    int kept = LargestPairing.size(removed, added, Wire::mayBecome);
    long set =
        after.positions().entrySet().stream()
            .filter(each -> !each.getValue().equals(before.positions().get(each.getKey())))
            .count();
    return 2 * added.size() + 2 * removed.size() - 2 * kept + (int) set;
  }

  private static List<Wire> without(Set<Wire> all, Set<Wire> some) {
    return all.stream().filter(wire -> !some.contains(wire)).toList();
  }

  private void pull(Action action) {
    action
        .cordBefore()
        .ifPresent(
            cord -> {
              if (!wires.remove(Wire.of(cord))) {
                complain.accept("there is no cord to pull from " + cord);
              }
            });
  }

  private void plug(Action action) {
    action
        .cordAfter()
        .ifPresent(
            cord -> {
              if (!wires.add(Wire.of(cord))) {
                complain.accept("there already is a cord from " + cord);
              }
            });
  }

  private void set(Action action) {
    if (action instanceof Action.Turn turn) {
      set(turn.knob(), turn.from(), turn.to());
    } else if (action instanceof Action.Flip flip) {
      set(flip.toggle(), flip.from(), flip.to());
    }
  }

  private void set(Control control, Optional<Position> from, Position to) {
    if (!touched.add(control)) {
      complain.accept(control + " is set twice");
    }
    if (!Optional.ofNullable(positions.get(control)).equals(from)) {
      complain.accept("%s does not stand at %s".formatted(control, from));
    }
    positions.put(control, to);
  }

  private void compare(RigNow after) {
    without(wires, after.wires())
        .forEach(wire -> complain.accept("the moves leave a cord between " + wire));
    without(after.wires(), wires)
        .forEach(wire -> complain.accept("no move brings the cord between " + wire));
    Set<Control> all = new HashSet<>(positions.keySet());
    all.addAll(after.positions().keySet());
    for (Control control : all) {
      if (!Optional.ofNullable(positions.get(control))
          .equals(Optional.ofNullable(after.positions().get(control)))) {
        complain.accept(
            "the moves leave %s at %s, the song has it at %s"
                .formatted(control, positions.get(control), after.positions().get(control)));
      }
    }
  }
}
