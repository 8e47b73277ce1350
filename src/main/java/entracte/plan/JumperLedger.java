package entracte.plan;

import java.util.Arrays;

/**
 * Counts, for each jumper, how many songs need it at each position. A jumper has one position for
 * the whole set, so needs for any other than the one most wanted are conflicts.
 */
final class JumperLedger {
  private final RigIndex rig;
  private final int[][][] needs;
  private int conflicts;

  JumperLedger(RigIndex rig) {
    this.rig = rig;
    needs = new int[rig.modules.size()][][];
    for (int m = 0; m < needs.length; m++) {
      needs[m] =
          rig.modules.get(m).kind().jumpers().stream()
              .map(j -> new int[j.positions().size()])
              .toArray(int[][]::new);
    }
  }

  private void change(int module, int jumper, int position, int by) {
    int[] counts = needs[module][jumper];
    conflicts -= conflicts(counts);
    counts[position] += by;
    conflicts += conflicts(counts);
  }

  /** Counts, or takes back, what a role of a song needs of the module that plays it. */
  void count(Shape shape, int role, int module, int by) {
    int kind = rig.kindOfModule[module];
    for (int need : shape.jumpers.ofRole()[role]) {
      change(
          module, shape.jumpers.jumperOf()[need][kind], shape.jumpers.positionOf()[need][kind], by);
    }
  }

  private static int conflicts(int[] counts) {
    int sum = 0;
    int most = 0;
    for (int count : counts) {
      sum += count;
      most = Math.max(most, count);
    }
    return sum - most;
  }

  /** How many songs need the jumper at the position. */
  int needs(int module, int jumper, int position) {
    return needs[module][jumper][position];
  }

  /** How many songs need the jumper in whatever way. */
  int needs(int module, int jumper) {
    return Arrays.stream(needs[module][jumper]).sum();
  }

  /** The needs that one position for each jumper leaves unmet. */
  int conflicts() {
    return conflicts;
  }

  /** The position that some song needs, or -1 if none cares. */
  int position(int module, int jumper) {
    int[] counts = needs[module][jumper];
    int best = -1;
    for (int p = 0; p < counts.length; p++) {
      if (counts[p] > 0 && (best < 0 || counts[p] > counts[best])) {
        best = p;
      }
    }
    return best;
  }
}
