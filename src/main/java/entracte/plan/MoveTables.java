package entracte.plan;

import entracte.rig.Group;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** What there is to choose in a problem. */
final class MoveTables {
  private final Problem problem;
  private final RigIndex rig;
  private final Casting casting;

  MoveTables(Problem problem, Casting casting) {
    this.problem = problem;
    this.casting = casting;
    rig = problem.rig;
  }

  /** The roles with more than one candidate, by song. */
  int[][] freeRoles() {
    int[][] free = new int[problem.songs()][];
    for (int s = 0; s < free.length; s++) {
      Shape shape = problem.shape(casting, s);
      free[s] =
          IntStream.range(0, shape.roles()).filter(r -> shape.candidates[r].length > 1).toArray();
    }
    return free;
  }

  /** The groups of several equal strips that some song uses, each as its strips. */
  int[][] equalStrips() {
    List<int[]> groups = new ArrayList<>();
    for (int m = 0; m < rig.modules.size(); m++) {
      List<Group> ofKind = rig.modules.get(m).kind().groups();
      for (int g = 0; g < ofKind.size(); g++) {
        if (ofKind.get(g).count() > 1 && isUsed(m, g)) {
          int first = rig.firstStrip[m][g];
          groups.add(IntStream.range(first, first + ofKind.get(g).count()).toArray());
        }
      }
    }
    return groups.toArray(int[][]::new);
  }

  private boolean isUsed(int module, int group) {
    int kind = rig.kindOfModule[module];
    return Arrays.stream(problem.shapes)
        .flatMap(Arrays::stream)
        .anyMatch(
            shape ->
                IntStream.range(0, shape.strips.size())
                    .anyMatch(
                        q ->
                            shape.groupOfStrip[q][kind] == group
                                && IntStream.of(shape.candidates[shape.roleOfStrip[q]])
                                    .anyMatch(c -> c == module)));
  }

  /** The strips that can be shut. */
  int[] shuttable() {
    return IntStream.range(0, rig.strips()).filter(q -> rig.closedControls[q].length > 0).toArray();
  }
}
