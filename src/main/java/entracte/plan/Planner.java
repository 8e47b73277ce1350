package entracte.plan;

import entracte.check.PlayableSet;

/** The front door of this package: plans a set. */
public final class Planner {
  private Planner() {}

  /** Plans {@code set}; every plan returned has passed the {@link Verifier}. */
  public static Result plan(PlayableSet set, Options options) {
    long begun = System.nanoTime();
    Problem problem = new Problem(set, options.start(), rig -> prices(rig, options));
    FirstCasting.Found found = new FirstCasting(problem).find();
    if (found instanceof FirstCasting.Found.NoneFor none) {
      String song = set.parts().get(none.song()).song().name();
      return new Result.Impossible("No casting serves \"" + song + "\".");
    }
    Casting first = ((FirstCasting.Found.Cast) found).casting();
    Search search = new Search(problem, first, options, begun);
    return search.run();
  }

  private static Prices prices(RigIndex rig, Options options) {
    return switch (options.aim()) {
      case FEWEST, EVEN -> Prices.counted(rig);
      case FASTEST -> Prices.timed(rig, options.tempo());
    };
  }
}
