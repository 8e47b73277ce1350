package entracte.plan;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** Gives a song another of its shapes: other multiples to split its fan-outs. */
final class Reshaping {
  private final Problem problem;
  private final int[] songs;

  Reshaping(Problem problem) {
    this.problem = problem;
    songs = IntStream.range(0, problem.songs()).filter(s -> problem.shapes[s].length > 1).toArray();
  }

  /** Whether any song has more than one shape. */
  boolean any() {
    return songs.length > 0;
  }

  /** A copy with one song reshaped; empty if the throw came to nothing. */
  Optional<Casting> propose(Casting casting, SplittableRandom random) {
    int song = songs[random.nextInt(songs.length)];
    int shape = random.nextInt(problem.shapes[song].length);
    if (shape == casting.shape[song]) {
      return Optional.empty();
    }
    Casting next = casting.copy();
    Shape taken = problem.shapes[song][shape];
    next.shape[song] = shape;
    next.module[song] = new int[taken.roles()];
    next.strip[song] = new int[taken.strips.size()];
    boolean[] taking = new boolean[problem.rig.modules.size()];
    int written = problem.set.parts().get(song).roles().size();
    for (int role = 0; role < taken.roles(); role++) {
      int module =
          role < written
              ? casting.module[song][role]
              : anyFree(taken.candidates[role], taking, random);
      if (module < 0) {
        return Optional.empty();
      }
      taking[module] = true;
      next.module[song][role] = module;
      if (role < written) {
        int from = taken.firstStrip[role];
        int to = taken.firstStrip[role + 1];
        System.arraycopy(casting.strip[song], from, next.strip[song], from, to - from);
      } else {
        StripChoice.lowest(problem.rig, taken, role, module, next.strip[song]);
      }
    }
    return Optional.of(next);
  }

  private static int anyFree(int[] candidates, boolean[] taking, SplittableRandom random) {
    int[] free = Arrays.stream(candidates).filter(m -> !taking[m]).toArray();
    return free.length == 0 ? -1 : free[random.nextInt(free.length)];
  }
}
