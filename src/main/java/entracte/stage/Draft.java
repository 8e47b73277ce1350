package entracte.stage;

import entracte.cue.Verb;
import entracte.midi.Dispatch;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A state in the making, for one event only. */
final class Draft {
  final Show show;
  final long now;
  final List<Effect> effects = new ArrayList<>();

  Phase phase;
  List<Integer> order;
  int at;
  int section;
  List<Way> ways;
  int firstWay;
  TrueRig base;
  List<Done> done;
  long since;
  long began;
  long lockedUntil;
  int request;
  boolean waiting;
  Optional<Event.Planned> held;
  List<Move> first;
  Set<String> dead;
  Optional<Menu> menu;
  boolean ready;
  String notice;

  /** What a menu did, in a few words; empty if nothing. */
  String label = "";

  Draft(Show show, State from, long now) {
    this.show = show;
    this.now = now;
    phase = from.phase();
    order = new ArrayList<>(from.order());
    at = from.at();
    section = from.section();
    ways = from.ways();
    firstWay = from.firstWay();
    base = from.base();
    done = new ArrayList<>(from.done());
    since = from.since();
    began = from.began();
    lockedUntil = from.lockedUntil();
    request = from.request();
    waiting = from.waiting();
    held = from.held();
    first = from.first();
    dead = new HashSet<>(from.dead());
    menu = from.menu();
    ready = from.ready();
    notice = "";
  }

  State state() {
    return new State(
        phase,
        order,
        at,
        section,
        ways,
        firstWay,
        base,
        done,
        since,
        began,
        lockedUntil,
        request,
        waiting,
        held,
        first,
        dead,
        menu,
        ready,
        notice);
  }

  Optional<Way> way() {
    return state().way();
  }

  int ahead() {
    return state().ahead();
  }

  ShowSong song(int index) {
    return show.songs().get(order.get(index));
  }

  /** Every move of the way ahead is open again. */
  void reopen() {
    done = new ArrayList<>(untouched());
  }

  /** Whether no hand has been at the way ahead. */
  boolean isUntouched() {
    return done.equals(untouched());
  }

  /** All is open; only a level that is down already needs no lowering. */
  private List<Done> untouched() {
    List<Move> moves = way().map(Way::moves).orElse(List.of());
    List<Done> open = new ArrayList<>(Collections.nCopies(moves.size(), Done.OPEN));
    if (base.levelDown() && !moves.isEmpty() && moves.get(0).verb() == Verb.LOWER) {
      open.set(0, Done.DONE);
    }
    return open;
  }

  /** Makes the rig as it stands the start of what comes, and forgets the ways. */
  void settle() {
    List<Done> ofFirst = done.subList(0, Math.min(first.size(), done.size()));
    if (way().isPresent() && !ofFirst.contains(Done.OPEN)) {
      first = List.of();
    }
    base = state().rig();
    ways = List.of();
    firstWay = ahead();
    reopen();
  }

  /** Answers to what was asked for after {@code before} are none to a state that is put back. */
  void forgetPlansSince(State before, int asked) {
    request = before.request() == asked ? asked : asked + 1;
    held = Optional.empty();
  }

  /** Asks for ways from the rig as it stands to the songs that are left. */
  void plan() {
    settle();
    ask();
  }

  /** Asks, from the base, for what is left; whatever was asked before is not waited for. */
  void ask() {
    request++;
    List<Integer> left = order.subList(Math.min(ahead(), order.size()), order.size());
    waiting = !left.isEmpty();
    if (waiting) {
      TrueRig from = Beforehand.leaves(base, dead);
      effects.add(new Effect.Plan(request, List.copyOf(left), from, began > 0, dead));
    }
  }

  void send(List<Dispatch> dispatches) {
    if (!dispatches.isEmpty()) {
      effects.add(new Effect.Send(dispatches));
      lockedUntil = now + show.deafMillis();
    }
  }

  /** The way to song {@code index} begins. */
  void enterChangeover(int index) {
    at = index;
    section = 0;
    phase = Phase.CHANGEOVER;
    since = now;
    ready = false;
    send(song(index).sends().changeover());
  }

  /** The song begins, with whatever was done on the way to it. */
  void startSong() {
    boolean asPlanned = !done.contains(Done.OPEN) && !done.contains(Done.LEFT);
    base = state().rig().sounding();
    phase = Phase.SONG;
    since = now;
    section = 0;
    if (began == 0) {
      began = now;
    }
    first = List.of();
    reopen(); // what was done was done on the way to this song, not on the next way
    if (asPlanned && (way().isPresent() || ahead() >= order.size())) {
      waiting = false;
    } else {
      plan();
    }
    send(song(at).sends().song());
  }
}
