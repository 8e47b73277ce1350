package entracte.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans that arrive. */
final class Plans {
  private Plans() {}

  /**
   * Takes a plan if it is the one asked for last and no move has been made since. A second answer
   * to the same request is a better plan.
   */
  static void arrive(Draft draft, Event.Planned planned) {
    boolean begun = draft.done.stream().anyMatch(done -> done != Done.OPEN);
    boolean fits = planned.request() == draft.request && !begun;
    if (!fits || (!draft.waiting && draft.firstWay != draft.ahead())) {
      return;
    }
    int ahead = draft.ahead();
    List<Integer> before = draft.order.subList(ahead, draft.order.size());
    Optional<Integer> next = before.stream().findFirst();
    List<Integer> order = new ArrayList<>(draft.order.subList(0, ahead));
    order.addAll(planned.order());
    draft.order = order;
    draft.firstWay = ahead;
    draft.ways = Beforehand.of(draft, planned.ways());
    draft.base = draft.base.withJumpers(planned.jumpers());
    draft.waiting = false;
    draft.reopen();
    draft.notice = planned.note();
    if (draft.phase == Phase.CHANGEOVER) {
      nextIs(draft, next, planned.order());
    }
  }

  /** A song that cannot be played any more makes way for another, and the gear is told. */
  private static void nextIs(Draft draft, Optional<Integer> next, List<Integer> left) {
    if (left.isEmpty()) {
      draft.phase = Phase.END;
    } else if (!next.equals(Optional.of(left.get(0)))) {
      draft.section = 0;
      draft.send(draft.song(draft.at).sends().changeover());
    }
  }

  static void fail(Draft draft, Event.Unplanned unplanned) {
    if (unplanned.request() == draft.request) {
      draft.waiting = false;
      draft.notice = unplanned.reason();
    }
  }
}
