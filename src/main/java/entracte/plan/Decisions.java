package entracte.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * The order in which a proof settles a song: a module for each role as {@link RoleOrder} has it,
 * and a strip (a channel, a tap, one of several equal jacks) as soon as every module is known that
 * its cords lead to, so that each choice shows its cost at once.
 */
final class Decisions {
  /** The roles whose module is chosen at each place, or -1. */
  final int[] role;

  /** The strips of the shape that are chosen at each place, or -1. */
  final int[] strip;

  /** The place at which each role gets its module. */
  final int[] placeOfRole;

  /** The place at which each strip is chosen. */
  final int[] placeOfStrip;

  Decisions(Shape shape) {
    int places = shape.roles() + shape.strips.size();
    role = new int[places];
    strip = new int[places];
    placeOfRole = new int[shape.roles()];
    placeOfStrip = new int[shape.strips.size()];
    int place = 0;
    boolean[] cast = new boolean[shape.roles()];
    boolean[] chosen = new boolean[shape.strips.size()];
    for (int next : RoleOrder.of(shape)) {
      cast[next] = true;
      strip[place] = -1;
      placeOfRole[next] = place;
      role[place++] = next;
      for (int q : ready(shape, cast, chosen)) {
        chosen[q] = true;
        role[place] = -1;
        placeOfStrip[q] = place;
        strip[place++] = q;
      }
    }
  }

  private static List<Integer> ready(Shape shape, boolean[] cast, boolean[] chosen) {
    boolean[] waits = chosen.clone();
    for (int end = 0; end < shape.roleOfEnd.length; end++) {
      int q = shape.stripOfEnd[end];
      if (q >= 0 && !cast[shape.roleOfEnd[end ^ 1]]) {
        waits[q] = true;
      }
    }
    List<Integer> ready = new ArrayList<>();
    for (int q = 0; q < waits.length; q++) {
      if (!waits[q] && cast[shape.roleOfStrip[q]]) {
        ready.add(q);
      }
    }
    return ready;
  }

  int places() {
    return role.length;
  }

  /** Whether pasts that differ may meet at a place: where a role comes after strips chosen. */
  boolean isCrossroads(int song, int place) {
    return song > 0 && (place == 0 || (role[place] >= 0 && strip[place - 1] >= 0));
  }

  /** The place at which the jack of an end is known. */
  int known(Shape shape, int end) {
    int q = shape.stripOfEnd[end];
    return q < 0 ? placeOfRole[shape.roleOfEnd[end]] : placeOfStrip[q];
  }
}
