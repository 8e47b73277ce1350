package entracte.stage;

import entracte.cue.Change;
import entracte.cue.Verb;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What puts the night right when it is not as planned. Each asks for a new plan if it must. */
final class Amends {
  private Amends() {}

  static void allDone(Draft draft) {
    draft.done.replaceAll(done -> done == Done.OPEN ? Done.DONE : done);
    draft.notice = "Every move counts as done.";
  }

  static void leave(Draft draft) {
    int open = draft.done.indexOf(Done.OPEN);
    if (open >= 0) {
      draft.done.set(open, Done.LEFT);
      draft.notice = "Left undone. What follows will be planned from the rig as it is.";
    }
  }

  /** The menu cannot restore a state by itself; it puts every field back. */
  static Consumer<Draft> undo(Night night) {
    Night.Past last = night.past().get(0);
    return draft -> {
      Draft old = new Draft(draft.show, last.before(), draft.now);
      draft.phase = old.phase;
      draft.order = old.order;
      draft.at = old.at;
      draft.section = old.section;
      draft.ways = old.ways;
      draft.firstWay = old.firstWay;
      draft.base = old.base;
      draft.done = old.done;
      draft.since = old.since;
      draft.began = old.began;
      draft.first = old.first;
      draft.dead = old.dead;
      draft.waiting = false;
      draft.forgetPlansSince(last.before(), draft.request);
      draft.notice = "Taken back: " + last.label() + ". Nothing was sent.";
      if (draft.way().isEmpty() && draft.ahead() < draft.order.size()) {
        draft.ask();
      }
    };
  }

  static void skip(Draft draft) {
    jump(draft, draft.ahead() + 1);
  }

  /** The songs before {@code index} are not played. */
  static void jump(Draft draft, int index) {
    int ahead = draft.ahead();
    draft.settle();
    draft.order.subList(ahead, Math.min(index, draft.order.size())).clear();
    arrived(draft);
  }

  static void insert(Draft draft, int song) {
    draft.settle();
    draft.order.add(draft.ahead(), song);
    if (draft.phase == Phase.END) {
      draft.phase = Phase.CHANGEOVER;
      draft.at = draft.order.size() - 1;
      draft.since = draft.now;
    }
    arrived(draft);
  }

  static void swap(Draft draft) {
    draft.settle();
    Collections.swap(draft.order, draft.ahead(), draft.ahead() + 1);
    arrived(draft);
  }

  /** The order has changed; on the way to a song, it may be another song now. */
  private static void arrived(Draft draft) {
    draft.firstWay = draft.ahead();
    draft.ask();
    if (draft.phase != Phase.CHANGEOVER) {
      return;
    }
    if (draft.at < draft.order.size()) {
      draft.section = 0;
      draft.send(draft.song(draft.at).sends().changeover());
    } else {
      draft.phase = Phase.END;
    }
  }

  static void planAgain(Draft draft) {
    draft.plan();
  }

  static void toggle(Draft draft, int move) {
    boolean isDone = draft.done.get(move) == Done.DONE;
    draft.done.set(move, isDone ? Done.OPEN : Done.DONE);
    draft.menu = Optional.of(new Menu(Menu.Page.MOVES, move + 1, "", ""));
  }

  static void cordIsNotThere(Draft draft, Change.Plugged cord) {
    draft.settle();
    draft.base = draft.base.without(cord);
    draft.ask();
    draft.notice = "No cord from " + cord.source() + " to " + cord.sink() + ". Planning again.";
  }

  static void cordIsThere(Draft draft, String from, String to) {
    draft.settle();
    draft.base = draft.base.after(List.of(new Change.Plugged(from, to, 0)));
    draft.ask();
    draft.notice = "A cord from " + from + " to " + to + ". Planning again.";
  }

  static void dies(Draft draft, String module) {
    draft.dead.add(module);
    draft.plan();
    draft.notice = "Planning again without " + module + ".";
  }

  static void silence(Draft draft) {
    Steps.quiet(draft);
    draft.notice = "LOWER the main level now. The gear was sent quiet. The place is kept.";
  }

  /** Whatever is plugged: it comes out, and the next song is built from nothing. */
  static void fromNothing(Draft draft) {
    draft.settle();
    draft.base = draft.base.cleared();
    draft.first =
        List.of(
            Beforehand.fixed(Verb.LOWER, Beforehand.LOWER),
            Beforehand.fixed(Verb.PULL, "PULL every cord"));
    setOut(draft);
    draft.ask();
  }

  /** A patch that sounds by itself, in as few moves as it takes from what is plugged. */
  static void drone(Draft draft, int song) {
    draft.settle();
    draft.order.add(draft.ahead(), song);
    setOut(draft);
    draft.firstWay = draft.ahead();
    draft.ask();
    draft.notice = "A drone, to find your feet. The songs go on after it.";
  }

  /** Ends the song, if one sounds, and begins the way to what comes. */
  private static void setOut(Draft draft) {
    if (draft.phase != Phase.CHANGEOVER && draft.ahead() < draft.order.size()) {
      draft.enterChangeover(draft.ahead());
      draft.firstWay = draft.ahead();
    }
  }
}
