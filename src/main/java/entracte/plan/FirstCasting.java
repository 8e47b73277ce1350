package entracte.plan;

import java.util.Arrays;
import java.util.Optional;

/**
 * Casts every song somehow: roles to modules by augmenting paths (Kuhn 1955), strips to the lowest
 * free numbers. Exact about one thing only: whether each song by itself can be cast.
 */
final class FirstCasting {
  private final Problem problem;
  private final RigIndex rig;

  FirstCasting(Problem problem) {
    this.problem = problem;
    rig = problem.rig;
  }

  /** A casting, or the first song (from 0) that has none. */
  sealed interface Found {
    record Cast(Casting casting) implements Found {}

    record NoneFor(int song) implements Found {}
  }

  Found find() {
    Casting casting = new Casting(problem.songs(), rig.strips());
    for (int song = 0; song < problem.songs(); song++) {
      if (!cast(casting, song)) {
        return new Found.NoneFor(song);
      }
    }
    return new Found.Cast(casting);
  }

  private boolean cast(Casting casting, int song) {
    for (int choice = 0; choice < problem.shapes.get(song).size(); choice++) {
      Shape shape = problem.shapes.get(song).get(choice);
      Optional<int[]> modules = match(shape);
      if (modules.isPresent()) {
        casting.shape[song] = choice;
        casting.module[song] = modules.get();
        casting.strip[song] = lowestStrips(shape, modules.get());
        return true;
      }
    }
    return false;
  }

  private Optional<int[]> match(Shape shape) {
    int[] roleOn = new int[rig.modules.size()];
    Arrays.fill(roleOn, -1);
    int[] moduleOf = new int[shape.roles()];
    for (int role = 0; role < shape.roles(); role++) {
      if (!augment(shape, role, roleOn, new boolean[roleOn.length])) {
        return Optional.empty();
      }
    }
    for (int m = 0; m < roleOn.length; m++) {
      if (roleOn[m] >= 0) {
        moduleOf[roleOn[m]] = m;
      }
    }
    return Optional.of(moduleOf);
  }

  private boolean augment(Shape shape, int role, int[] roleOn, boolean[] tried) {
    for (int m : shape.candidates[role]) {
      if (!tried[m]) {
        tried[m] = true;
        if (roleOn[m] < 0 || augment(shape, roleOn[m], roleOn, tried)) {
          roleOn[m] = role;
          return true;
        }
      }
    }
    return false;
  }

  private int[] lowestStrips(Shape shape, int[] modules) {
    int[] physical = new int[shape.strips.size()];
    for (int role = 0; role < shape.roles(); role++) {
      StripChoice.lowest(rig, shape, role, modules[role], physical);
    }
    return physical;
  }
}
