package entracte.stage;

import entracte.cue.GearSends;
import entracte.midi.Dispatch;
import java.util.ArrayList;
import java.util.List;

/** What "next" does, and sending. */
final class Steps {
  private Steps() {}

  /** One step on; what it was in a few words, empty if nothing came of it. */
  static String next(Draft draft) {
    return switch (draft.phase) {
      case WAITING -> refuse(draft, "The plan is still being worked out.");
      case CHANGEOVER -> nextMove(draft);
      case SONG -> afterSong(draft);
      case PAUSE -> {
        draft.enterChangeover(draft.at + 1);
        yield "changeover to " + draft.song(draft.at).title();
      }
      case END -> refuse(draft, "The set is over.");
    };
  }

  private static String refuse(Draft draft, String notice) {
    draft.notice = notice;
    return "";
  }

  private static String nextMove(Draft draft) {
    if (draft.way().isEmpty()) {
      return refuse(
          draft,
          draft.waiting
              ? "The moves are still being worked out."
              : "There is no way planned to this song; the menu helps.");
    }
    int open = draft.done.indexOf(Done.OPEN);
    if (open >= 0) {
      draft.done.set(open, Done.DONE);
      return draft.way().get().moves().get(open).text();
    }
    draft.startSong();
    return "start of " + draft.song(draft.at).title();
  }

  private static String afterSong(Draft draft) {
    List<GearSends.Section> sections = draft.song(draft.at).sends().sections();
    if (draft.section < sections.size()) {
      GearSends.Section section = sections.get(draft.section);
      draft.section++;
      draft.send(section.sends());
      return section.name();
    }
    if (draft.at + 1 >= draft.order.size()) {
      draft.phase = Phase.END;
      draft.since = draft.now;
      return "end of the set";
    }
    if (draft.song(draft.at + 1).encore() && !draft.song(draft.at).encore()) {
      draft.phase = Phase.PAUSE;
      draft.since = draft.now;
      return "end of the set, before the encore";
    }
    draft.enterChangeover(draft.at + 1);
    return "changeover to " + draft.song(draft.at).title();
  }

  /** Everything that the place in the show asks for, whatever was sent before. */
  static void sendAgain(Draft draft) {
    if (draft.phase == Phase.WAITING || draft.order.isEmpty()) {
      draft.notice = "Nothing to send yet.";
      return;
    }
    GearSends sends = draft.song(draft.at).sends();
    List<Dispatch> all = new ArrayList<>(sends.changeover());
    if (draft.phase != Phase.CHANGEOVER) {
      all.addAll(sends.song());
      sends.sections().subList(0, draft.section).forEach(part -> all.addAll(part.sends()));
    }
    draft.send(all);
    draft.effects.add(new Effect.CaughtUp());
    draft.notice =
        all.isEmpty()
            ? "This song sends nothing."
            : "Everything for " + draft.song(draft.at).title() + " leaves again.";
  }

  static void quiet(Draft draft) {
    draft.send(draft.show.quiet());
    draft.notice =
        draft.show.quiet().isEmpty()
            ? "There is no gear to quiet. Main level down."
            : "Quiet sent to all gear. The place is kept.";
  }
}
