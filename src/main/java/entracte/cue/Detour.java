package entracte.cue;

import entracte.plan.Changeover;
import entracte.plan.DirectWay;
import entracte.plan.Plan;
import entracte.rig.RigState;
import java.util.List;

/** Steps between any two states of a plan, for when the songs are not taken one by one. */
public final class Detour {
  private Detour() {}

  /**
   * The steps from one song's state to another's, without tuning. No song sounds meanwhile, so none
   * of them says that it can be done unheard.
   *
   * @param from a song from 0, or {@link DirectWay#START}
   * @param to a song from 0
   */
  public static List<Step> steps(Plan plan, int from, int to) {
    return steps(plan, DirectWay.between(plan, from, to));
  }

  /** The steps from wherever the rig was left to a song's state, likewise. */
  public static List<Step> steps(Plan plan, RigState from, int to) {
    return steps(plan, DirectWay.between(plan, from, to));
  }

  private static List<Step> steps(Plan plan, Changeover way) {
    Course course = new Course(plan);
    ChangeoverSteps steps =
        new ChangeoverSteps(
            way,
            new CordReasons(course, plan.setList().parking()),
            new SettingReasons(course),
            new Unheard(course, plan.setList().parking()));
    List<Step> moves =
        steps.moves().stream().map(step -> step.leaving(step.changes(), false)).toList();
    return ChangeoverSteps.framed(moves, List.of(), List.of(), "", way.to());
  }
}
