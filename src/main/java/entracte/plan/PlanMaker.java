package entracte.plan;

import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Jumper;
import entracte.rig.Position;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Writes a casting out as a plan that a musician can follow. */
final class PlanMaker {
  private final Problem problem;
  private final Layout layout;
  private final CordLedger cords;
  private final RigIndex rig;
  private final Stays stays;
  private final int[] lengths;
  private final double[][] positions;

  private PlanMaker(Layout layout, Stays stays, int[] lengths) {
    this.layout = layout;
    this.stays = stays;
    this.lengths = lengths;
    problem = layout.problem;
    cords = layout.cords;
    rig = problem.rig;
    positions = new PositionSchedule(layout).position;
  }

  static Plan make(Layout layout, Stays stays, int[] lengths) {
    return new PlanMaker(layout, stays, lengths).plan();
  }

  private Plan plan() {
    List<SongPlan> songs = new ArrayList<>();
    List<Changeover> changeovers = new ArrayList<>();
    for (int song = 0; song < problem.songs(); song++) {
      songs.add(songPlan(song));
      boolean setUp = song == 0 && !problem.start.midSet();
      changeovers.add(new Changeover(song, setUp, actions(song + 1)));
    }
    return new Plan(problem.set, problem.start, songs, jumpers(), changeovers);
  }

  private SongPlan songPlan(int song) {
    int column = song + 1;
    List<PluggedCord> required = new ArrayList<>();
    List<PluggedCord> parked = new ArrayList<>();
    for (int stay = 0; stay < stays.all.size(); stay++) {
      Stay it = stays.all.get(stay);
      if (it.from() <= column && column <= it.to()) {
        int use = it.useIn(column, cords);
        (cords.columnOf[use] == column ? required : parked).add(plugged(stay, column));
      }
    }
    Map<Control, Position> at = new HashMap<>();
    for (int c = 0; c < positions.length; c++) {
      if (!Double.isNaN(positions[c][column])) {
        at.put(rig.controls.get(c), rig.position(c, positions[c][column]));
      }
    }
    return new SongPlan(problem.set.parts().get(song).song(), casting(song), required, parked, at);
  }

  private PluggedCord plugged(int stay, int column) {
    int use = stays.all.get(stay).useIn(column, cords);
    Socket source = rig.sockets.get(cords.sourceOf[use]);
    Socket sink = rig.sockets.get(cords.sinkOf[use]);
    return new PluggedCord(new Cord(source, sink), lengths[stay]);
  }

  private List<SongPlan.CastAs> casting(int song) {
    Shape shape = layout.shape(song);
    List<SongPlan.CastAs> casting = new ArrayList<>();
    for (int role = 0; role < shape.roles(); role++) {
      List<SongPlan.StripAs> strips = new ArrayList<>();
      for (int q = shape.firstStrip[role]; q < shape.firstStrip[role + 1]; q++) {
        int number = rig.numberOfStrip[layout.casting.strip[song][q]];
        strips.add(new SongPlan.StripAs(shape.strips.get(q).label(), number));
      }
      casting.add(
          new SongPlan.CastAs(
              shape.roleNames.get(role),
              rig.modules.get(layout.casting.module[song][role]),
              strips));
    }
    return casting;
  }

  private List<Action> actions(int column) {
    List<Integer> going = new ArrayList<>();
    List<Integer> coming = new ArrayList<>();
    for (int stay = 0; stay < stays.all.size(); stay++) {
      if (stays.all.get(stay).to() == column - 1) {
        going.add(stay);
      }
      if (stays.all.get(stay).from() == column) {
        coming.add(stay);
      }
    }
    int[] continues = continues(going, coming, column);
    List<Action> actions = new ArrayList<>();
    for (int g = 0; g < going.size(); g++) {
      actions.add(
          continues[g] < 0
              ? new Action.Remove(plugged(going.get(g), column - 1))
              : shift(going.get(g), coming.get(continues[g]), column));
    }
    for (int c = 0; c < coming.size(); c++) {
      int comer = c;
      if (IntStream.of(continues).noneMatch(continued -> continued == comer)) {
        actions.add(new Action.Add(plugged(coming.get(c), column)));
      }
    }
    for (int c = 0; c < positions.length; c++) {
      control(c, column).ifPresent(actions::add);
    }
    return actions;
  }

  /** If all moves cost the same, as many shifts as there can be; else those that save most. */
  private int[] continues(List<Integer> going, List<Integer> coming, int column) {
    if (problem.prices.areEven) {
      return Shifts.most(
          going.size(), coming.size(), (g, c) -> mayShift(going.get(g), coming.get(c), column));
    }
    return Shifts.dearest(
        going.size(), coming.size(), (g, c) -> saved(going.get(g), coming.get(c), column));
  }

  private int saved(int stay, int next, int column) {
    if (!mayShift(stay, next, column)) {
      return 0;
    }
    Socket unmoved = ((Action.Shift) shift(stay, next, column)).stays();
    return problem.prices.stay(rig.indexOf(unmoved));
  }

  /** Whether the cord of one stay can be that of the next with one plug left where it is. */
  private boolean mayShift(int stay, int next, int column) {
    Cord from = plugged(stay, column - 1).cord();
    Cord to = plugged(next, column).cord();
    return lengths[stay] == lengths[next] && (to.uses(from.source()) || to.uses(from.sink()));
  }

  private Action shift(int stay, int next, int column) {
    PluggedCord from = plugged(stay, column - 1);
    PluggedCord to = plugged(next, column);
    Socket unmoved =
        to.cord().uses(from.cord().source()) ? from.cord().source() : from.cord().sink();
    return new Action.Shift(from, to, unmoved);
  }

  private Optional<Action> control(int c, int column) {
    double before = positions[c][column - 1];
    double after = positions[c][column];
    if (Double.compare(before, after) == 0) {
      return Optional.empty();
    }
    Optional<Position> from =
        Double.isNaN(before) ? Optional.empty() : Optional.of(rig.position(c, before));
    Control control = rig.controls.get(c);
    Position to = rig.position(c, after);
    return Optional.of(
        control.isKnob() ? new Action.Turn(control, from, to) : new Action.Flip(control, from, to));
  }

  private Map<Plan.JumperIn, String> jumpers() {
    Map<Plan.JumperIn, String> set = new HashMap<>();
    for (int m = 0; m < rig.modules.size(); m++) {
      List<Jumper> ofKind = rig.modules.get(m).kind().jumpers();
      for (int j = 0; j < ofKind.size(); j++) {
        int position = layout.jumpers.position(m, j);
        if (position >= 0) {
          set.put(
              new Plan.JumperIn(rig.modules.get(m), ofKind.get(j)),
              ofKind.get(j).positions().get(position));
        }
      }
    }
    return set;
  }
}
