package entracte.plan;

import entracte.check.PlayableSet;
import java.util.List;
import java.util.Optional;

/** The front door of this package: plans a set. */
public final class Planner {
  private static final long STEPS_PER_SONG = 40_000;

  private Planner() {}

  /** Plans {@code set}; every plan returned has passed the {@link Verifier}. */
  public static Result plan(PlayableSet set, Options options) {
    long begun = System.nanoTime();
    Problem problem = new Problem(set, options.start());
    FirstCasting.Found found = new FirstCasting(problem).find();
    if (found instanceof FirstCasting.Found.NoneFor none) {
      String song = set.parts().get(none.song()).song().name();
      return new Result.Impossible("No casting serves \"" + song + "\".");
    }
    Casting first = ((FirstCasting.Found.Cast) found).casting();
    Annealer annealer = new Annealer(problem, first, options.seed());
    long deadline = begun + (long) (options.seconds() * 1e9);
    annealer.anneal(
        STEPS_PER_SONG * problem.songs(), 1, () -> System.nanoTime() > deadline);
    Layout layout = new Ledger(problem, annealer.best()).layout;
    PlugSchedule schedule = new PlugSchedule(layout.cords, problem.weights);
    Stays stays = new Stays(layout.cords, schedule);
    Optional<int[]> lengths = CordLengths.find(problem, layout.cords, stays);
    if (lengths.isEmpty()) {
      return new Result.Impossible("The stock does not suffice.");
    }
    Plan plan = PlanMaker.make(layout, stays, lengths.get());
    List<String> complaints = Verifier.verify(plan);
    if (!complaints.isEmpty()) {
      throw new IllegalStateException("a wrong plan: " + complaints);
    }
    double seconds = (System.nanoTime() - begun) / 1e9;
    return new Result.Planned(plan, 0, 0, Result.Stopped.STEPS, seconds);
  }
}
