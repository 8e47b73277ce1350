package entracte.stage;

import entracte.stage.Night.Past;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The front door of this package: one event after the other. Replaying the same events gives the
 * same night.
 */
public final class Stage {
  /** A press that turns out to be a hold is taken back if it is not older than this. */
  private static final long HOLD_TAKES_BACK_MILLIS = 1500;

  private static final int BACKSPACE = 8;

  private final Show show;
  private final Night before;
  private final Draft draft;
  private List<Past> past;

  private Stage(Show show, Night before, Event event) {
    this.show = show;
    this.before = before;
    this.draft = new Draft(show, before.now(), event.atMillis());
    this.past = before.past();
  }

  /** What {@code event} makes of the night. */
  public static Turn after(Show show, Night night, Event event) {
    return new Stage(show, night, event).take(event);
  }

  /** The night that these events made; {@code show} where they do not tell by which. */
  public static Night replay(Show show, List<Event> events) {
    Night night = Night.fresh();
    Show by = show;
    for (Event event : events) {
      by = event.basis().outline().orElse(by);
      night = after(by, night, event).night();
    }
    return night;
  }

  private Turn take(Event event) {
    if (event instanceof Event.Pressed pressed) {
      return pressed(pressed.input());
    }
    if (event instanceof Event.Typed typed) {
      draft.menu = draft.menu.map(menu -> narrowed(menu, typed.letter()));
    } else if (event instanceof Event.Begun begun) {
      begin(begun);
    } else if (event instanceof Event.Planned planned) {
      Plans.arrive(draft, planned);
    } else if (event instanceof Event.Unplanned unplanned) {
      Plans.fail(draft, unplanned);
    } else if (event instanceof Event.Resumed resumed) {
      resume(resumed);
    }
    return turn();
  }

  private void begin(Event.Begun begun) {
    draft.order = new ArrayList<>(begun.order());
    draft.base = begun.rig();
    draft.phase = Phase.CHANGEOVER; // the set-up: the gear may load the first song's sounds
    draft.since = begun.atMillis();
    if (!draft.order.isEmpty()) {
      draft.send(draft.song(0).sends().changeover());
    }
    draft.ask();
  }

  /** What was awaited when the program ended will not come any more. */
  private void resume(Event.Resumed resumed) {
    draft.menu = Optional.empty();
    draft.held = Optional.empty();
    draft.notice = "Taken up where it was left. The gear was sent nothing; send again if needed.";
    if (resumed.changed()) {
      planAnew();
    } else if (draft.waiting) {
      draft.ask();
    }
  }

  /** The ways were planned for other patches, those before the last things as well. */
  private void planAnew() {
    withinSections(draft);
    past = past.stream().map(this::withoutWays).toList();
    draft.plan();
  }

  private static void withinSections(Draft some) {
    boolean inSong = some.at < some.order.size();
    int sections = inSong ? some.song(some.at).sends().sections().size() : 0;
    some.section = Math.min(some.section, sections);
  }

  private Past withoutWays(Past old) {
    Draft then = new Draft(show, old.before(), draft.now);
    withinSections(then);
    then.settle();
    return new Past(then.state(), old.label(), old.isPlace(), old.atMillis());
  }

  private static Menu narrowed(Menu menu, int letter) {
    String old = menu.filter();
    String filter =
        letter == BACKSPACE
            ? old.substring(0, Math.max(0, old.length() - 1))
            : old + Character.toString(letter);
    return new Menu(menu.page(), 0, filter, menu.context());
  }

  private Turn pressed(Input input) {
    if (draft.menu.isPresent() && MenuKeys.take(draft, before, input)) {
      return draft.label.isEmpty() ? turn() : remembered(draft.label, false);
    }
    return switch (input) {
      case NEXT, ENTER -> next();
      case BACK -> back();
      case HOLD -> hold();
      case MENU -> menu();
      case UNDO -> undo();
      case SEND_AGAIN -> again();
      case QUIET -> quiet();
      case READY -> ready();
      case CLOSE -> new Turn(before, List.of());
      case DOWN -> next();
      case UP -> back();
    };
  }

  private Turn next() {
    if (draft.now < draft.lockedUntil) {
      return new Turn(before, List.of());
    }
    String label = Steps.next(draft);
    return label.isEmpty() ? turn() : remembered(label, true);
  }

  private Turn back() {
    Optional<Past> last = past.isEmpty() ? Optional.empty() : Optional.of(past.get(0));
    if (last.isPresent() && last.get().isPlace()) {
      return restored("Back. Nothing was sent.");
    }
    draft.notice =
        last.map(p -> "The last thing was \"" + p.label() + "\"; undo takes it back.")
            .orElse("This is the beginning.");
    return turn();
  }

  private Turn undo() {
    if (past.isEmpty()) {
      draft.notice = "There is nothing to take back.";
      return turn();
    }
    return restored("Taken back: " + past.get(0).label() + ". Nothing was sent.");
  }

  /** The press that began the hold is taken back first. */
  private Turn hold() {
    if (show.hold() == Show.Hold.NOTHING) {
      return turn();
    }
    boolean pressedJustNow =
        !past.isEmpty()
            && past.get(0).isPlace()
            && draft.now - past.get(0).atMillis() <= HOLD_TAKES_BACK_MILLIS;
    Turn first = pressedJustNow ? restored("") : new Turn(before, List.of());
    Input means = show.hold() == Show.Hold.BACK ? Input.BACK : Input.MENU;
    Turn second = after(show, first.night(), new Event.Pressed(draft.now, means));
    List<Effect> effects = new ArrayList<>(first.effects());
    effects.addAll(second.effects());
    return new Turn(second.night(), effects);
  }

  private Turn menu() {
    draft.menu = Optional.of(Menu.of(Menu.Page.MAIN));
    return turn();
  }

  private Turn again() {
    Steps.sendAgain(draft);
    return turn();
  }

  private Turn quiet() {
    Steps.quiet(draft);
    return turn();
  }

  private Turn ready() {
    draft.ready = !draft.ready;
    return turn();
  }

  private Turn turn() {
    Plans.takeHeld(draft);
    return new Turn(new Night(draft.state(), past), draft.effects);
  }

  private Turn remembered(String label, boolean isPlace) {
    State plain = new Draft(show, before.now(), draft.now).state();
    List<Past> longer = new ArrayList<>();
    longer.add(new Past(withoutMenu(plain), label, isPlace, draft.now));
    longer.addAll(past.subList(0, Math.min(past.size(), Night.MOST_PAST - 1)));
    past = longer;
    return turn();
  }

  private State withoutMenu(State state) {
    Draft plain = new Draft(show, state, draft.now);
    plain.menu = Optional.empty();
    plain.held = Optional.empty();
    return plain.state();
  }

  /** As it was before the last thing; a plan that was awaited then is asked for again. */
  private Turn restored(String notice) {
    Draft old = new Draft(show, past.get(0).before(), draft.now);
    old.forgetPlansSince(past.get(0).before(), before.now().request());
    old.notice = notice;
    old.lockedUntil = 0;
    if (old.waiting || old.way().isEmpty() && old.ahead() < old.order.size()) {
      old.ask();
    }
    return new Turn(new Night(old.state(), past.subList(1, past.size())), old.effects);
  }
}
