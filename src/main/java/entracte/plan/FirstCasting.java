package entracte.plan;

import java.util.Optional;

/**
 * Casts every song somehow: roles to modules by assignments of least cost, where a jumper that
 * other songs want otherwise is what costs most, strips to the lowest free numbers. Exact about one
 * thing only: whether each song by itself can be cast. Songs whose jumpers are at odds are cast
 * again and again, each as it suits the others best; jumpers may be at odds in the end.
 */
final class FirstCasting {
  private static final int MOST_PASSES = 30;

  private final Problem problem;
  private final RigIndex rig;
  private final JumperLedger jumpers;

  FirstCasting(Problem problem) {
    this.problem = problem;
    rig = problem.rig;
    jumpers = new JumperLedger(rig);
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
    for (int pass = 0; pass < MOST_PASSES && jumpers.conflicts() > 0; pass++) {
      for (int song = 0; song < problem.songs(); song++) {
        vote(casting, song, -1);
        cast(casting, song);
      }
    }
    return new Found.Cast(casting);
  }

  private boolean cast(Casting casting, int song) {
    for (int choice = 0; choice < problem.shapes[song].length; choice++) {
      Shape shape = problem.shapes[song][choice];
      Optional<int[]> modules = new RoleAssignment(rig, shape, jumpers).find();
      if (modules.isPresent()) {
        casting.shape[song] = choice;
        casting.module[song] = modules.get();
        casting.strip[song] = lowestStrips(shape, modules.get());
        vote(casting, song, 1);
        return true;
      }
    }
    return false;
  }

  /** Counts, or takes back, what a song wants of the jumpers. */
  private void vote(Casting casting, int song, int by) {
    Shape shape = problem.shape(casting, song);
    for (int role = 0; role < shape.roles(); role++) {
      jumpers.count(shape, role, casting.module[song][role], by);
    }
  }

  private int[] lowestStrips(Shape shape, int[] modules) {
    int[] physical = new int[shape.strips.size()];
    for (int role = 0; role < shape.roles(); role++) {
      StripChoice.lowest(rig, shape, role, modules[role], physical);
    }
    return physical;
  }
}
