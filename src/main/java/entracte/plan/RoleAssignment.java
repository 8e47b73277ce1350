package entracte.plan;

import java.util.Optional;

/**
 * Roles of one song to modules, each to one of its own, so that jumpers are set against as few
 * other songs as can be, and then as few jumpers anew: an assignment by minimum-cost flow.
 */
final class RoleAssignment {
  /** Dearer than all jumpers set anew. */
  private static final long AGAINST_A_SONG = 1_000;

  /** What casting a role is worth: more than all that it may cost. */
  private static final long CAST = 1L << 40;

  private final RigIndex rig;
  private final Shape shape;
  private final JumperLedger jumpers;

  /**
   * @param jumpers as the other songs want them
   */
  RoleAssignment(RigIndex rig, Shape shape, JumperLedger jumpers) {
    this.rig = rig;
    this.shape = shape;
    this.jumpers = jumpers;
  }

  /** The module of each role; empty if there are too few. */
  Optional<int[]> find() {
    int roles = shape.roles();
    int last = roles + rig.modules.size() + 1;
    MinCostFlow flow = new MinCostFlow(last + 1);
    int[][] arcs = new int[roles][];
    for (int role = 0; role < roles; role++) {
      flow.arc(0, 1 + role, 1, -CAST);
      arcs[role] = new int[shape.candidates[role].length];
      for (int i = 0; i < arcs[role].length; i++) {
        int module = shape.candidates[role][i];
        arcs[role][i] = flow.arc(1 + role, 1 + roles + module, 1, cost(role, module));
      }
    }
    for (int module = 0; module < rig.modules.size(); module++) {
      flow.arc(1 + roles + module, last, 1, 0);
    }
    flow.send(roles);
    int[] moduleOf = new int[roles];
    for (int role = 0; role < roles; role++) {
      int chosen = 0;
      while (chosen < arcs[role].length && flow.flow(arcs[role][chosen]) == 0) {
        chosen++;
      }
      if (chosen == arcs[role].length) {
        return Optional.empty();
      }
      moduleOf[role] = shape.candidates[role][chosen];
    }
    return Optional.of(moduleOf);
  }

  private long cost(int role, int module) {
    int kind = rig.kindOfModule[module];
    long sum = 0;
    for (int want : shape.jumpers.ofRole()[role]) {
      int jumper = shape.jumpers.jumperOf()[want][kind];
      int others = jumpers.needs(module, jumper);
      int alike = jumpers.needs(module, jumper, shape.jumpers.positionOf()[want][kind]);
      sum += others == 0 ? 1 : (others - alike) * AGAINST_A_SONG;
    }
    return sum;
  }
}
