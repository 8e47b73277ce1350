package entracte.rehearsal;

import entracte.cue.Change;
import entracte.cue.Step;
import entracte.plan.DirectWay;
import entracte.plan.Plan;
import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.rig.Control;
import entracte.rig.Position;
import entracte.rig.RigState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How the rig stands when a changeover was broken off. */
final class PartWay {
  private final SongPlan to;
  private final List<PluggedCord> cords = new ArrayList<>();
  private final Map<Control, Position> positions = new HashMap<>();

  private PartWay(Plan plan, int song) {
    to = plan.songs().get(song);
    RigState from = DirectWay.standing(plan, song - 1);
    cords.addAll(PluggedCord.of(from));
    positions.putAll(from.positions());
  }

  /**
   * The state on the way to a song.
   *
   * @param song the song that the changeover leads to, from 0
   * @param done the steps that were done; the way began where the song before leaves the rig
   */
  static RigState after(Plan plan, int song, List<Step> done) {
    PartWay way = new PartWay(plan, song);
    done.stream().flatMap(step -> step.changes().stream()).forEach(way::make);
    return PluggedCord.state(way.cords, way.positions);
  }

  private void make(Change change) {
    if (change instanceof Change.Pulled gone) {
      cords.removeIf(cord -> hangs(cord, gone.source(), gone.sink()));
    } else if (change instanceof Change.Plugged now) {
      to.cords().stream().filter(cord -> hangs(cord, now.source(), now.sink())).forEach(cords::add);
    } else if (change instanceof Change.Set set) {
      to.positions()
          .forEach(
              (control, position) -> {
                if (control.toString().equals(set.control())) {
                  positions.put(control, position);
                }
              });
    }
  }

  private static boolean hangs(PluggedCord cord, String source, String sink) {
    return cord.cord().source().toString().equals(source)
        && cord.cord().sink().toString().equals(sink);
  }
}
