package entracte.plan;

import java.util.Arrays;

/** What the songs from one on can tell apart of a rig: all else may be forgotten before them. */
final class Coming {
  /** The sockets that some song may need. */
  final boolean[] socket;

  /** The controls that some song may want, be it only to shut a channel. */
  final boolean[] control;

  /** What is interchangeable for these songs. */
  final Alike alike;

  private final RigIndex rig;

  Coming(Problem problem, int song) {
    rig = problem.rig;
    socket = new boolean[rig.sockets.size()];
    control = new boolean[rig.controls.size()];
    alike = new Alike(problem.window(song, problem.songs()));
    for (int s = song; s < problem.songs(); s++) {
      Arrays.stream(problem.shapes[s]).forEach(this::mark);
    }
    for (int[] closed : rig.closedControls) {
      Arrays.stream(closed).forEach(c -> control[c] = true);
    }
  }

  private void mark(Shape shape) {
    for (int end = 0; end < shape.roleOfEnd.length; end++) {
      for (int module : shape.candidates[shape.roleOfEnd[end]]) {
        int jack = shape.jackOfEnd[end][rig.kindOfModule[module]];
        for (int strip : strips(shape, shape.stripOfEnd[end], module)) {
          socket[rig.firstSocketOfStrip[strip] + jack] = true;
        }
      }
    }
    Shape.Wants wants = shape.wants;
    for (int want = 0; want < wants.role().length; want++) {
      for (int module : shape.candidates[wants.role()[want]]) {
        int place = wants.controlOf()[want][rig.kindOfModule[module]];
        for (int strip : strips(shape, wants.strip()[want], module)) {
          control[rig.firstControlOfStrip[strip] + place] = true;
        }
      }
    }
  }

  /** The strips of a module that a strip of a shape may become. */
  private int[] strips(Shape shape, int q, int module) {
    if (q < 0) {
      return new int[] {rig.firstStrip[module][0]};
    }
    int first = StripChoice.firstOfGroup(rig, shape, q, module);
    int[] all = new int[StripChoice.count(rig, shape, q, module)];
    Arrays.setAll(all, i -> first + i);
    return all;
  }
}
