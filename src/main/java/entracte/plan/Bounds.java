package entracte.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.function.IntSupplier;

/**
 * Lower bounds on the changeovers of every window of neighbouring songs, small windows first. What
 * a window costs is at least what any two parts of it cost that meet in one song, for that song's
 * changeover belongs to the first part alone; {@link WindowProof} then tries to do better.
 */
final class Bounds {
  private static final int SHARES = 4;

  private final Problem problem;
  private final Workers workers;
  private final BooleanSupplier stop;

  /** The bound for the songs from i to j (exclusive). */
  private final int[][] bound;

  /** Whether the bound is the least cost itself. */
  private final boolean[][] exact;

  private Optional<Casting> found = Optional.empty();

  Bounds(Problem problem, Workers workers, BooleanSupplier stop) {
    this.problem = problem;
    this.workers = workers;
    this.stop = stop;
    bound = new int[problem.songs() + 1][problem.songs() + 1];
    exact = new boolean[problem.songs() + 1][problem.songs() + 1];
  }

  /** The casting of the whole set that meets the bound, if the proof came upon one. */
  Optional<Casting> found() {
    return found;
  }

  /** No plan of the whole set has fewer moves in its changeovers. */
  int whole() {
    return bound[0][problem.songs()];
  }

  /** Works on all windows up to a length, but not on the whole. */
  void improveSmall(int longest, long nodes) {
    improve(longest, nodes, () -> 1);
  }

  /**
   * Works on all windows up to a length and on the whole, with so many steps for each.
   *
   * @param enough the moves of the best plan so far: the whole needs no better bound
   */
  void improve(int longest, long nodes, IntSupplier enough) {
    for (int length = problem.start.midSet() ? 1 : 2; length <= problem.songs(); length++) {
      boolean tries = length <= longest || length == problem.songs();
      List<Callable<Void>> tasks = new ArrayList<>();
      for (int from = 0; from + length <= problem.songs(); from++) {
        int first = from;
        int end = from + length;
        join(first, end);
        if (tries
            && !exact[first][end]
            && whole() < enough.getAsInt()
            && (length > 1 || from == 0)) {
          tasks.add(
              () -> {
                prove(first, end, nodes, enough);
                return null;
              });
        }
      }
      workers.all(tasks);
    }
    proveWhole(nodes, enough);
  }

  private void join(int from, int to) {
    for (int middle = from + 1; middle < to - 1; middle++) {
      bound[from][to] = Math.max(bound[from][to], bound[from][middle + 1] + bound[middle][to]);
    }
  }

  private void prove(int from, int to, long nodes, IntSupplier enough) {
    boolean isWhole = from == 0 && to == problem.songs();
    if (isWhole && PastStates.suit(problem) && problem.songs() > 1) {
      return;
    }
    if (stop.getAsBoolean()) {
      return;
    }
    WindowProof proof = new WindowProof(problem.window(from, to), following(from, to), stop);
    bound[from][to] =
        proof.prove(bound[from][to], isWhole ? enough.getAsInt() : Integer.MAX_VALUE, nodes);
    exact[from][to] = proof.isExact();
    if (isWhole) {
      found = proof.found();
    }
  }

  /** For each song of a window, the least that the changeovers after it cost. */
  private int[] following(int from, int to) {
    int[] following = new int[to - from];
    for (int s = 0; s < following.length; s++) {
      following[s] = bound[from + s][to];
    }
    if (problem.start.midSet() && from == 0) {
      following[0] = to > 1 ? bound[1][to] : 0;
    }
    return following;
  }

  /** The whole set, on all cores at once; each share keeps what it has learnt for the next time. */
  private void proveWhole(long nodes, IntSupplier enough) {
    int songs = problem.songs();
    if (!PastStates.suit(problem)
        || songs < 2
        || whole() >= enough.getAsInt()
        || exact[0][songs]
        || stop.getAsBoolean()) {
      return;
    }
    List<WindowProof> parts = new ArrayList<>();
    for (int share = 0; share < SHARES; share++) {
      WindowProof part =
          new WindowProof(problem.window(0, songs), following(0, songs), stop, share, SHARES);
      part.allow(nodes / 2);
      parts.add(part);
    }
    boolean inVain = true;
    while (inVain && whole() < enough.getAsInt()) {
      int limit = whole() + 1;
      List<Callable<Boolean>> tasks = new ArrayList<>();
      parts.forEach(part -> tasks.add(() -> part.isInVain(limit)));
      inVain = workers.all(tasks).stream().allMatch(vain -> vain);
      bound[0][songs] += inVain ? 1 : 0;
    }
    exact[0][songs] = parts.stream().anyMatch(WindowProof::isExact);
    found = parts.stream().map(WindowProof::found).flatMap(Optional::stream).findFirst();
  }
}
