package entracte.plan;

import java.util.Arrays;

/**
 * Who plays what in every song: the part of a plan that the search decides. Everything else follows
 * from it exactly.
 */
final class Casting {
  /** The module of a role that has none yet. */
  static final int UNCAST = -1;

  /** Which of its shapes each song takes. */
  final int[] shape;

  /** The module of each role, by song. */
  final int[][] module;

  /** The physical strip of each strip of the shape, by song. */
  final int[][] strip;

  /** Whether a channel that a song leaves alone is shut in it, by physical strip and song. */
  final boolean[][] shut;

  Casting(int songs, int strips) {
    shape = new int[songs];
    module = new int[songs][];
    strip = new int[songs][];
    shut = new boolean[strips][songs];
  }

  Casting copy() {
    Casting copy = new Casting(shape.length, shut.length);
    System.arraycopy(shape, 0, copy.shape, 0, shape.length);
    for (int s = 0; s < shape.length; s++) {
      copy.module[s] = module[s].clone();
      copy.strip[s] = strip[s].clone();
    }
    for (int q = 0; q < shut.length; q++) {
      copy.shut[q] = shut[q].clone();
    }
    return copy;
  }

  /** A casting whose song k is song {@code order[k]} of this one. */
  Casting inOrder(int... order) {
    Casting other = new Casting(order.length, shut.length);
    for (int s = 0; s < order.length; s++) {
      other.shape[s] = shape[order[s]];
      other.module[s] = module[order[s]].clone();
      other.strip[s] = strip[order[s]].clone();
      for (int q = 0; q < shut.length; q++) {
        other.shut[q][s] = shut[q][order[s]];
      }
    }
    return other;
  }

  @Override
  public String toString() {
    return Arrays.deepToString(module);
  }
}
