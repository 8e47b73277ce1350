package entracte.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans that arrive. */
final class Plans {
  private Plans() {}

  /**
   * Takes a plan if it is the one asked for last and no move has been made since; once the menu is
   * closed, if one is open. A second answer to the same request is a better plan: it may not take
   * the moves away that hands are at.
   */
  static void arrive(Draft draft, Event.Planned planned) {
    if (!fits(draft, planned)) {
      return;
    }
    if (draft.menu.isPresent()) {
      draft.held = Optional.of(planned);
      return;
    }
    List<Way> before = draft.waiting ? List.of() : draft.ways;
    List<Way> ways = Beforehand.of(draft, planned.ways());
    boolean handsAtWork = draft.phase == Phase.CHANGEOVER || draft.ready;
    if (!before.isEmpty() && handsAtWork && !movesOfFirst(before).equals(movesOfFirst(ways))) {
      return;
    }
    take(draft, planned, ways);
    int saved = count(before) - count(ways);
    if (before.size() == ways.size() && saved > 0) {
      String fewer = "A better plan came: " + saved + (saved == 1 ? " move" : " moves") + " fewer.";
      draft.notice = (draft.notice + " " + fewer).strip();
    }
  }

  /**
   * What arrived while the menu was open, if it is of use still; what the menu says comes first.
   */
  static void takeHeld(Draft draft) {
    if (draft.menu.isEmpty() && draft.held.isPresent()) {
      Event.Planned planned = draft.held.get();
      draft.held = Optional.empty();
      String said = draft.notice;
      arrive(draft, planned);
      if (!said.isEmpty() && !said.equals(draft.notice)) {
        draft.notice = (said + " " + draft.notice).strip();
      }
    }
  }

  private static boolean fits(Draft draft, Event.Planned planned) {
    return planned.request() == draft.request
        && draft.isUntouched()
        && (draft.waiting || draft.firstWay == draft.ahead());
  }

  private static List<Move> movesOfFirst(List<Way> ways) {
    return ways.isEmpty() ? List.of() : ways.get(0).moves();
  }

  private static int count(List<Way> ways) {
    return ways.stream().mapToInt(Way::count).sum();
  }

  private static void take(Draft draft, Event.Planned planned, List<Way> ways) {
    int ahead = draft.ahead();
    List<Integer> before = draft.order.subList(ahead, draft.order.size());
    Optional<Integer> next = before.stream().findFirst();
    List<Integer> order = new ArrayList<>(draft.order.subList(0, ahead));
    order.addAll(planned.order());
    draft.order = order;
    draft.firstWay = ahead;
    draft.ways = ways;
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
