package entracte.plan.oracle;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.Literal;
import entracte.check.Part;
import entracte.check.Part.JackUse;
import entracte.check.Part.Owner;
import entracte.check.Part.Strip;
import entracte.check.PlayableSet;
import entracte.plan.Action;
import entracte.plan.Changeover;
import entracte.plan.Plan;
import entracte.plan.Plan.JumperIn;
import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.plan.SongPlan.StripAs;
import entracte.plan.Start;
import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.Position;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a plan out of the solver's values, so that the verifier can judge the oracle too. */
final class PlanReading {
  private final CpSolver values;
  private final PlayableSet set;
  private final Start start;
  private final List<SongVars> songs;
  private final List<CordVars> cords;
  private final List<Changes> changes;
  private final ControlVars controls;
  private final Jumpers jumpers;

  PlanReading(
      CpSolver values,
      PlayableSet set,
      Start start,
      List<SongVars> songs,
      List<CordVars> cords,
      List<Changes> changes,
      ControlVars controls,
      Jumpers jumpers) {
    this.values = values;
    this.set = set;
    this.start = start;
    this.songs = songs;
    this.cords = cords;
    this.changes = changes;
    this.controls = controls;
    this.jumpers = jumpers;
  }

  Plan plan() {
    List<SongPlan> plans = new ArrayList<>();
    List<Changeover> changeovers = new ArrayList<>();
    Map<Control, Position> positions = new HashMap<>(start.state().positions());
    for (int song = 0; song < songs.size(); song++) {
      List<Action> actions = new ArrayList<>(turns(song, positions));
      actions.addAll(new CordReading(values, changes.get(song)).actions());
      changeovers.add(new Changeover(song, song == 0 && !start.midSet(), actions));
      plans.add(song(song, positions));
    }
    return new Plan(set, start, plans, jumperPositions(), changeovers);
  }

  private boolean is(Literal literal) {
    return values.booleanValue(literal);
  }

  private <K> K chosen(Map<K, ? extends Literal> choice) {
    return choice.entrySet().stream()
        .filter(each -> is(each.getValue()))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow();
  }

  private SongPlan song(int index, Map<Control, Position> positions) {
    CordVars plugged = cords.get(index);
    List<PluggedCord> required = new ArrayList<>();
    List<PluggedCord> parked = new ArrayList<>();
    plugged.plugged.forEach(
        (piece, in) -> {
          if (is(in)) {
            for (Cord way : piece.wire().ways()) {
              if (values.value(plugged.required.get(way)) == 1) {
                required.add(new PluggedCord(way, piece.length()));
              } else if (plugged.waits.get(way).either().stream().anyMatch(this::is)) {
                parked.add(new PluggedCord(way, piece.length()));
              }
            }
          }
        });
    SongVars song = songs.get(index);
    return new SongPlan(song.part.song(), casting(song), required, parked, positions);
  }

  private List<CastAs> casting(SongVars song) {
    List<CastAs> all = new ArrayList<>();
    for (int role = 0; role < song.cast.size(); role++) {
      List<StripAs> strips = new ArrayList<>();
      List<Strip> wanted = song.part.roles().get(role).channels();
      for (int strip = 0; strip < wanted.size(); strip++) {
        Spot spot = chosen(song.strips.get(role).get(strip));
        strips.add(new StripAs(wanted.get(strip).label(), spot.number()));
      }
      all.add(new CastAs(song.part.roles().get(role).name(), chosen(song.cast.get(role)), strips));
    }
    for (int net = 0; net < song.chains.size(); net++) {
      if (song.chains.get(net).isPresent()) {
        all.addAll(multiples(song.chains.get(net).get(), sourceName(song.part, net)));
      }
    }
    return all;
  }

  private List<CastAs> multiples(Chain chain, String source) {
    List<CastAs> all = new ArrayList<>();
    for (int link = 0; link < chain.length(); link++) {
      Module module = chosen(chain.members.get(link));
      List<StripAs> taps =
          chain.everyTap().stream()
              .flatMap(tap -> tap.entrySet().stream())
              .filter(tap -> tap.getKey().module().equals(module) && is(tap.getValue()))
              .map(tap -> new StripAs("tap", tap.getKey().number()))
              .toList();
      all.add(new CastAs(source + " multiple " + (link + 1), module, taps));
    }
    return all;
  }

  private static String sourceName(Part part, int net) {
    JackUse use = part.nets().get(net).source();
    String role = part.roles().get(use.owner().role()).name();
    if (use.owner().strip() == Owner.OWN) {
      return role + "." + use.jack();
    }
    Strip strip = part.roles().get(use.owner().role()).channels().get(use.owner().strip());
    return role + "." + strip.label() + (strip.isChannel() ? "." + use.jack() : "");
  }

  private List<Action> turns(int song, Map<Control, Position> positions) {
    List<Action> actions = new ArrayList<>();
    controls.stands.forEach(
        (control, bySong) ->
            bySong.get(song).entrySet().stream()
                .filter(each -> is(each.getValue()))
                .map(Map.Entry::getKey)
                .filter(position -> !position.equals(positions.get(control)))
                .forEach(
                    position -> {
                      Position was = positions.put(control, position);
                      actions.add(set(control, Optional.ofNullable(was), position));
                    }));
    return actions;
  }

  private static Action set(Control control, Optional<Position> was, Position position) {
    return control.isKnob()
        ? new Action.Turn(control, was, position)
        : new Action.Flip(control, was, position);
  }

  private Map<JumperIn, String> jumperPositions() {
    Map<JumperIn, String> all = new HashMap<>();
    jumpers.positions.forEach((jumper, choice) -> all.put(jumper, chosen(choice)));
    return all;
  }
}
