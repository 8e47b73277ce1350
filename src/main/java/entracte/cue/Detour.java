package entracte.cue;

import entracte.plan.DirectWay;
import entracte.plan.Plan;
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
    Course course = new Course(plan);
    ChangeoverSteps steps =
        new ChangeoverSteps(
            DirectWay.between(plan, from, to),
            new CordReasons(course, plan.setList().parking()),
            new SettingReasons(course),
            new Unheard(course, plan.setList().parking()));
    List<Step> moves =
        steps.moves().stream().map(step -> step.leaving(step.changes(), false)).toList();
    return ChangeoverSteps.framed(moves, List.of(), List.of(), to);
  }
}
