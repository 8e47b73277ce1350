package entracte.plan;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The same casting by other names: of modules, and of strips, that nothing tells apart, those with
 * the lowest numbers are used first, as anybody would who patches by hand. Where cords are short it
 * may cost moves, for places differ in what reaches them.
 */
final class LowestFirst {
  private static final int NONE = -1;

  private final Problem problem;
  private final RigIndex rig;
  private final Alike alike;

  LowestFirst(Problem problem) {
    this.problem = problem;
    rig = problem.rig;
    alike = new Alike(problem);
  }

  Casting of(Casting casting) {
    int[] newModule = named(casting.module, alike.moduleClass);
    int[] newStrip = new int[rig.strips()];
    for (int strip = 0; strip < newStrip.length; strip++) {
      int module = rig.moduleOfStrip[strip];
      newStrip[strip] = strip - rig.firstStrip[module][0] + rig.firstStrip[newModule[module]][0];
    }
    Casting moved = renamed(casting, newStrip);
    return renamed(moved, named(moved.strip, stripClass()));
  }

  /** For each number the lowest of its class that is left, in the order in which songs use them. */
  private static int[] named(int[][] bySong, int[] classOf) {
    int[] name = new int[classOf.length];
    Arrays.fill(name, NONE);
    boolean[] taken = new boolean[classOf.length];
    IntStream used = Arrays.stream(bySong).flatMapToInt(Arrays::stream);
    IntStream.concat(used, IntStream.range(0, classOf.length))
        .filter(each -> name[each] == NONE)
        .forEach(
            each -> {
              int least = 0;
              while (taken[least] || classOf[least] != classOf[each]) {
                least++;
              }
              name[each] = least;
              taken[least] = true;
            });
    return name;
  }

  /** Strips of one group are alike, but for those that are told apart: each its own class. */
  private int[] stripClass() {
    int[] classOf = new int[rig.strips()];
    for (int strip = 0; strip < classOf.length; strip++) {
      classOf[strip] = alike.stripIsSpecial[strip] ? classOf.length + strip : firstOfGroup(strip);
    }
    return classOf;
  }

  private int firstOfGroup(int strip) {
    int first = 0;
    for (int start : rig.firstStrip[rig.moduleOfStrip[strip]]) {
      first = start <= strip ? Math.max(first, start) : first;
    }
    return first;
  }

  private Casting renamed(Casting casting, int[] newStrip) {
    Casting other = casting.copy();
    for (int song = 0; song < problem.songs(); song++) {
      for (int role = 0; role < other.module[song].length; role++) {
        int own = rig.firstStrip[casting.module[song][role]][0];
        other.module[song][role] = rig.moduleOfStrip[newStrip[own]];
      }
      for (int q = 0; q < other.strip[song].length; q++) {
        other.strip[song][q] = newStrip[casting.strip[song][q]];
      }
    }
    for (int strip = 0; strip < newStrip.length; strip++) {
      other.shut[newStrip[strip]] = casting.shut[strip].clone();
    }
    return other;
  }
}
