package entracte.plan;

import java.util.Arrays;

/**
 * What a set-up takes at the least: from a bare rig both plugs of every cord of the first song, and
 * a first setting of as many controls as any one song names.
 */
final class SetUpBound {
  private SetUpBound() {}

  static int of(Problem problem) {
    boolean bare = problem.startCords.length == 0;
    if (!bare || problem.start.midSet() || !problem.start.state().positions().isEmpty()) {
      return 0;
    }
    int controls = 0;
    for (Shape[] shapes : problem.shapes) {
      int here = Arrays.stream(shapes).mapToInt(s -> s.wants.role().length).min().orElse(0);
      controls = Math.max(controls, here);
    }
    int cords = Arrays.stream(problem.shapes[0]).mapToInt(Shape::cords).min().orElse(0);
    return 2 * cords + controls;
  }
}
