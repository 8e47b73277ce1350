package entracte.plan;

import entracte.rig.Control;
import entracte.rig.Position;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Takes over the casting of another plan for every song that is the same in both. */
final class KnownCasting {
  private final Problem problem;
  private final RigIndex rig;

  KnownCasting(Problem problem) {
    this.problem = problem;
    rig = problem.rig;
  }

  /** A copy of {@code fallback} with what {@code plan} knows. */
  Casting from(Plan plan, Casting fallback) {
    Casting casting = fallback.copy();
    for (int song = 0; song < problem.songs(); song++) {
      String name = problem.set.parts().get(song).song().name();
      int here = song;
      plan.songs().stream()
          .filter(known -> known.song().name().equals(name))
          .findFirst()
          .ifPresent(
              known -> {
                takeOver(casting, here, known.casting());
                takeOverShut(casting, here, known.positions());
              });
    }
    return casting;
  }

  private void takeOver(Casting casting, int song, List<SongPlan.CastAs> known) {
    for (int shape = 0; shape < problem.shapes[song].length; shape++) {
      Optional<int[]> modules = modules(problem.shapes[song][shape], known);
      if (modules.isPresent()) {
        casting.shape[song] = shape;
        casting.module[song] = modules.get();
        casting.strip[song] = strips(problem.shapes[song][shape], modules.get(), known);
        return;
      }
    }
  }

  /** A channel that stood shut may hold a cord that waits. */
  private void takeOverShut(Casting casting, int song, Map<Control, Position> known) {
    for (int strip = 0; strip < rig.strips(); strip++) {
      int[] controls = rig.closedControls[strip];
      boolean shut = controls.length > 0;
      for (int i = 0; i < controls.length; i++) {
        Position at = known.get(rig.controls.get(controls[i]));
        shut &= rig.position(controls[i], rig.closedValues[strip][i]).equals(at);
      }
      casting.shut[strip][song] = shut;
    }
  }

  /** The module of each role, if the shape has these roles and they may still play them. */
  private Optional<int[]> modules(Shape shape, List<SongPlan.CastAs> known) {
    if (!shape.roleNames.equals(known.stream().map(SongPlan.CastAs::role).toList())) {
      return Optional.empty();
    }
    int[] modules = new int[known.size()];
    for (int role = 0; role < modules.length; role++) {
      int module = rig.modules.indexOf(known.get(role).module());
      boolean may = Arrays.stream(shape.candidates[role]).anyMatch(c -> c == module);
      int strips = shape.firstStrip[role + 1] - shape.firstStrip[role];
      if (!may || strips != known.get(role).strips().size()) {
        return Optional.empty();
      }
      modules[role] = module;
    }
    return Optional.of(modules);
  }

  private int[] strips(Shape shape, int[] modules, List<SongPlan.CastAs> known) {
    int[] strips = new int[shape.strips.size()];
    for (int q = 0; q < strips.length; q++) {
      int role = shape.roleOfStrip[q];
      int first = StripChoice.firstOfGroup(rig, shape, q, modules[role]);
      int number = known.get(role).strips().get(q - shape.firstStrip[role]).number();
      strips[q] = first + (StripChoice.isOwn(rig, shape, q, modules[role]) ? 0 : number - 1);
    }
    return strips;
  }
}
