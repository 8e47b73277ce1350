package entracte.plan;

import java.util.Arrays;

/**
 * The order in which a proof casts the roles of a song: the one with fewest candidates first, then
 * always one with the most cords to those already cast, so that every choice shows its cost at
 * once.
 */
final class RoleOrder {
  private RoleOrder() {}

  static int[] of(Shape shape) {
    int[] order = new int[shape.roles()];
    boolean[] placed = new boolean[order.length];
    int[] ties = new int[order.length];
    for (int i = 0; i < order.length; i++) {
      int next = -1;
      for (int role = 0; role < order.length; role++) {
        if (!placed[role] && (next < 0 || comesBefore(shape, ties, role, next))) {
          next = role;
        }
      }
      order[i] = next;
      placed[next] = true;
      tie(shape, ties, next);
    }
    return order;
  }

  private static boolean comesBefore(Shape shape, int[] ties, int role, int other) {
    boolean only = shape.candidates[role].length == 1;
    boolean otherOnly = shape.candidates[other].length == 1;
    if (only != otherOnly) {
      return only;
    }
    if (ties[role] != ties[other]) {
      return ties[role] > ties[other];
    }
    return shape.candidates[role].length < shape.candidates[other].length;
  }

  private static void tie(Shape shape, int[] ties, int role) {
    Arrays.stream(shape.cordsOfRole[role])
        .forEach(
            cord -> {
              ties[shape.roleOfEnd[2 * cord]]++;
              ties[shape.roleOfEnd[2 * cord + 1]]++;
            });
  }
}
