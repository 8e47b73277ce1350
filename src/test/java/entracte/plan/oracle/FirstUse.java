package entracte.plan.oracle;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Breaks the symmetry among interchangeable things: they are numbered in the order of their first
 * use, song by song and within a song user by user. Any plan can be renumbered so, as no user has
 * two of them and nothing else tells them apart.
 *
 * @param <T> the things, such as modules or taps
 */
final class FirstUse<T> {
  private final Cp cp;
  private final List<T> things;

  FirstUse(Cp cp, List<T> things) {
    this.cp = cp;
    this.things = things;
  }

  /**
   * @param users by song, the users in order: what each would use
   */
  void order(List<? extends List<? extends Map<T, ? extends Literal>>> users) {
    List<BoolVar> usedBefore = new ArrayList<>();
    for (List<? extends Map<T, ? extends Literal>> song : users) {
      for (int thing = 1; thing < things.size(); thing++) {
        List<LinearArgument> earlier = new ArrayList<>();
        if (!usedBefore.isEmpty()) {
          earlier.add(usedBefore.get(thing - 1));
        }
        for (Map<T, ? extends Literal> user : song) {
          if (user.containsKey(things.get(thing))) {
            cp.atMostSum(user.get(things.get(thing)), earlier);
          }
          if (user.containsKey(things.get(thing - 1))) {
            earlier.add(user.get(things.get(thing - 1)));
          }
        }
      }
      usedBefore = usedSoFar(song, usedBefore);
    }
  }

  private List<BoolVar> usedSoFar(
      List<? extends Map<T, ? extends Literal>> song, List<BoolVar> before) {
    List<BoolVar> used = new ArrayList<>();
    for (int thing = 0; thing < things.size(); thing++) {
      BoolVar now = cp.bool("used so far");
      List<LinearArgument> causes = new ArrayList<>();
      for (Map<T, ? extends Literal> user : song) {
        if (user.containsKey(things.get(thing))) {
          causes.add(user.get(things.get(thing)));
        }
      }
      if (!before.isEmpty()) {
        causes.add(before.get(thing));
      }
      cp.atMostSum(now, causes);
      used.add(now);
    }
    return used;
  }
}
