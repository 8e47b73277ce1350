package entracte.plan;

import entracte.check.PlayableSet;
import entracte.plan.Plan.JumperIn;
import entracte.plan.SongPlan.CastAs;
import entracte.plan.SongPlan.StripAs;
import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Rig;
import entracte.rig.RigState;
import entracte.rig.Socket;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A plan written by hand, with every name as it is printed; also a right plan to spoil. */
final class PlanDraft {
  private final PlayableSet set;
  private final Rig rig;
  final List<SongDraft> songs = new ArrayList<>();
  final Map<JumperIn, String> jumpers = new HashMap<>();
  Start start = Start.bare();

  /** One song, and the way to it. */
  final class SongDraft {
    final List<CastAs> casting = new ArrayList<>();
    final List<PluggedCord> required = new ArrayList<>();
    final List<PluggedCord> parked = new ArrayList<>();
    final Map<Control, Position> positions = new HashMap<>();
    final List<Action> actions = new ArrayList<>();
    Song song;
    int to;
    boolean setUp;

    /** {@code cast("lead", "osc 1", "pitch 1")}: a label and a number for each strip. */
    SongDraft cast(String role, String module, String... strips) {
      List<StripAs> all =
          Arrays.stream(strips)
              .map(text -> text.split(" = "))
              .map(parts -> new StripAs(parts[0], Integer.parseInt(parts[1])))
              .toList();
      casting.add(new CastAs(role, module(module), all));
      return this;
    }

    SongDraft needs(String source, String sink) {
      required.add(cord(source, sink));
      return this;
    }

    SongDraft parks(String source, String sink) {
      parked.add(cord(source, sink));
      return this;
    }

    SongDraft stands(String control, Object at) {
      positions.put(control(control), position(at));
      return this;
    }

    SongDraft adds(String source, String sink) {
      actions.add(new Action.Add(cord(source, sink)));
      return this;
    }

    SongDraft removes(String source, String sink) {
      actions.add(new Action.Remove(cord(source, sink)));
      return this;
    }

    SongDraft turns(String control, Object to) {
      Control moved = control(control);
      Optional<Position> from = before(moved);
      actions.add(
          moved.isKnob()
              ? new Action.Turn(moved, from, position(to))
              : new Action.Flip(moved, from, position(to)));
      return this;
    }

    SongDraft shifts(String source, String sink, String newSource, String newSink) {
      PluggedCord from = cord(source, sink);
      PluggedCord next = cord(newSource, newSink);
      Socket stays = next.cord().uses(socket(source)) ? socket(source) : socket(sink);
      actions.add(new Action.Shift(from, next, stays));
      return this;
    }

    private Optional<Position> before(Control control) {
      int index = songs.indexOf(this);
      Map<Control, Position> known =
          index == 0 ? start.state().positions() : songs.get(index - 1).positions;
      return Optional.ofNullable(known.get(control));
    }
  }

  PlanDraft(PlayableSet set) {
    this.set = set;
    this.rig = set.setList().rig();
  }

  SongDraft song() {
    SongDraft song = new SongDraft();
    song.to = songs.size();
    song.song = set.parts().get(song.to).song();
    song.setUp = songs.isEmpty();
    songs.add(song);
    return song;
  }

  PlanDraft jumper(String module, String jumper, String position) {
    Module found = module(module);
    jumpers.put(new JumperIn(found, found.kind().jumper(jumper).orElseThrow()), position);
    return this;
  }

  PlanDraft startsWith(boolean midSet, String source, String sink) {
    PluggedCord cord = cord(source, sink);
    start =
        new Start(new RigState(List.of(cord.cord()), List.of(cord.lengthCm()), Map.of()), midSet);
    return this;
  }

  Module module(String name) {
    return rig.module(name).orElseThrow();
  }

  Socket socket(String name) {
    return rig.modules().stream()
        .flatMap(module -> module.sockets().stream())
        .filter(socket -> socket.toString().equals(name))
        .findFirst()
        .orElseThrow();
  }

  Control control(String name) {
    return rig.modules().stream()
        .flatMap(module -> module.controls().stream())
        .filter(control -> control.toString().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** A cord of the shortest length that reaches. */
  PluggedCord cord(String source, String sink) {
    Cord cord = new Cord(socket(source), socket(sink));
    int length = rig.cordLengthCm(cord.source().module(), cord.sink().module()).orElseThrow();
    return new PluggedCord(cord, length);
  }

  static Position position(Object at) {
    return at instanceof Number figure
        ? new Position.At(figure.doubleValue())
        : new Position.Thrown((String) at);
  }

  Plan plan() {
    List<SongPlan> plans = new ArrayList<>();
    List<Changeover> changeovers = new ArrayList<>();
    for (SongDraft song : songs) {
      plans.add(new SongPlan(song.song, song.casting, song.required, song.parked, song.positions));
      changeovers.add(new Changeover(song.to, song.setUp, song.actions));
    }
    return new Plan(set, start, plans, jumpers, changeovers);
  }

  List<String> complaints() {
    return Verifier.verify(plan());
  }
}
