package entracte.plan;

import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Position;
import entracte.rig.RigState;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The fewest moves from one state of a plan to another, whatever lies between: to bring the rig to
 * where a changeover begins, or to leave a song out. Cords that hang in the same jacks at both ends
 * stay; of the others as many as can be change places with one plug left where it is.
 */
public final class DirectWay {
  /** Stands for the state that the plan starts from, where a song's number is asked. */
  public static final int START = -1;

  private DirectWay() {}

  /**
   * The way between what is plugged and set in two songs.
   *
   * @param from a song from 0, or {@link #START}
   * @param to a song from 0
   */
  public static Changeover between(Plan plan, int from, int to) {
    return between(plan, standing(plan, from), to);
  }

  /**
   * The way from wherever the rig was left.
   *
   * @param to a song from 0
   */
  public static Changeover between(Plan plan, RigState from, int to) {
    RigState after = standing(plan, to);
    List<Action> actions = new ArrayList<>(cords(PluggedCord.of(from), PluggedCord.of(after)));
    after.positions().keySet().stream()
        .sorted(Comparator.comparing(Control::toString))
        .forEach(control -> set(control, from, after).ifPresent(actions::add));
    return new Changeover(to, false, actions);
  }

  /** The rig as a song leaves it, or as the plan finds it. */
  public static RigState standing(Plan plan, int song) {
    return song == START ? plan.start().state() : plan.songs().get(song).state();
  }

  private static List<Action> cords(List<PluggedCord> before, List<PluggedCord> after) {
    List<PluggedCord> going = without(before, after);
    List<PluggedCord> coming = without(after, before);
    int[] becomes =
        Shifts.most(
            going.size(), coming.size(), (g, c) -> shared(going.get(g), coming.get(c)).isPresent());
    List<Action> actions = new ArrayList<>();
    List<PluggedCord> added = new ArrayList<>(coming);
    for (int g = 0; g < going.size(); g++) {
      PluggedCord from = going.get(g);
      if (becomes[g] < 0) {
        actions.add(new Action.Remove(from));
      } else {
        PluggedCord to = coming.get(becomes[g]);
        actions.add(new Action.Shift(from, to, shared(from, to).orElseThrow()));
        added.remove(to);
      }
    }
    added.forEach(cord -> actions.add(new Action.Add(cord)));
    return actions;
  }

  private static List<PluggedCord> without(List<PluggedCord> these, List<PluggedCord> those) {
    return these.stream()
        .filter(cord -> those.stream().noneMatch(other -> same(cord, other)))
        .sorted(Comparator.comparing(PluggedCord::toString))
        .toList();
  }

  private static boolean same(PluggedCord a, PluggedCord b) {
    return a.lengthCm() == b.lengthCm() && a.cord().sameJacks(b.cord());
  }

  /** The jack in which a plug can stay while the cord's other one moves. */
  private static Optional<Socket> shared(PluggedCord from, PluggedCord to) {
    Cord next = to.cord();
    return Stream.of(from.cord().source(), from.cord().sink())
        .filter(socket -> from.lengthCm() == to.lengthCm() && next.uses(socket))
        .findFirst();
  }

  private static Optional<Action> set(Control control, RigState before, RigState after) {
    Position to = after.positions().get(control);
    Optional<Position> from = Optional.ofNullable(before.positions().get(control));
    if (from.filter(to::equals).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        control.isKnob() ? new Action.Turn(control, from, to) : new Action.Flip(control, from, to));
  }
}
