package entracte.plan;

import entracte.check.Part;
import java.util.List;

/**
 * What one song needs, as numbers, with its fan-outs split by multiples in one definite way. A song
 * has several shapes only where the rig has multiples of several sizes.
 *
 * <p>Roles are numbered; a role's strips are numbered through the whole song. Which jack or control
 * of a module is meant depends on the module's kind, so that every table is indexed by kind as well
 * and holds -1 for a kind that cannot play the role.
 */
final class Shape {
  /** The song's name for each role; implied multiples last. */
  final List<String> roleNames;

  /** The modules that can play each role. */
  final int[][] candidates;

  /** The strips that each role needs: the first, by role; one more entry closes the list. */
  final int[] firstStrip;

  final List<Part.Strip> strips;
  final int[] roleOfStrip;

  /** The group of the module that a strip is taken from, by strip and kind. */
  final int[][] groupOfStrip;

  /** The ends of each cord: 2 c is the source of cord c, 2 c + 1 its sink. */
  final int[] roleOfEnd;

  /** The strip that an end's jack is on; -1 for a jack that the module has once. */
  final int[] stripOfEnd;

  /** The place of the jack on its strip, by end and kind. */
  final int[][] jackOfEnd;

  /** The cords that each role has an end of. */
  final int[][] cordsOfRole;

  final Wants wants;
  final JumperWants jumpers;

  Shape(ShapeBuilder from) {
    roleNames = List.copyOf(from.roleNames);
    candidates = from.candidates.toArray(int[][]::new);
    strips = List.copyOf(from.strips);
    roleOfStrip = from.roleOfStrip.stream().mapToInt(Integer::intValue).toArray();
    firstStrip = new int[roleNames.size() + 1];
    for (int role : roleOfStrip) {
      firstStrip[role + 1]++;
    }
    for (int role = 0; role < roleNames.size(); role++) {
      firstStrip[role + 1] += firstStrip[role];
    }
    groupOfStrip = from.groupOfStrip.toArray(int[][]::new);
    roleOfEnd = from.roleOfEnd.stream().mapToInt(Integer::intValue).toArray();
    stripOfEnd = from.stripOfEnd.stream().mapToInt(Integer::intValue).toArray();
    jackOfEnd = from.jackOfEnd.toArray(int[][]::new);
    cordsOfRole = from.cordsOfRole();
    wants = from.wants;
    jumpers = from.jumpers;
  }

  int roles() {
    return candidates.length;
  }

  int cords() {
    return roleOfEnd.length / 2;
  }

  /**
   * What a song wants of knobs and switches.
   *
   * @param controlOf the place of the control on its strip, by want and kind
   * @param low the least position accepted, clipped to the scale, by want and kind
   * @param nominal the figure that the musician wrote
   * @param ofRole the wants of each role
   */
  record Wants(
      int[] role,
      int[] strip,
      int[][] controlOf,
      double[][] low,
      double[][] high,
      double[][] nominal,
      int[][] ofRole) {}

  /**
   * The jumpers that a song needs.
   *
   * @param jumperOf which of the kind's jumpers, by need and kind
   * @param positionOf the index of the position wanted, by need and kind
   * @param ofRole the needs of each role
   */
  record JumperWants(int[] role, int[][] jumperOf, int[][] positionOf, int[][] ofRole) {}
}
